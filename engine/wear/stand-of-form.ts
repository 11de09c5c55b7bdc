import type { Obstacle } from '../cloth/obstacle.ts';
import { distanceAt } from '../form/distance/distance-at.ts';
import { distanceField } from '../form/distance/distance-field.ts';
import type { Form, PartName } from '../form/form.ts';
import { minus, unit } from '../geometry/space.ts';
import type { Stand, StandArm } from './stand.ts';

/** Between nodes of the grid of distances, mm: cloth then lies within a tenth of a mm of where it should. */
const GRID = 8;

/** What of the body a garment lies on. */
export interface StandParts {
  readonly arms?: boolean;
  readonly legs?: boolean;
}

type StoodForm = Pick<Form, 'surface' | 'levels' | 'landmarks'>;

const withBothArms = ['torso', 'left arm', 'right arm'] as const;

function partsOf(form: StoodForm, parts: readonly PartName[]): Obstacle {
  const field = distanceField(form, { spacing: GRID, parts });
  return (x, y, z, out) => distanceAt(field, x, y, z, out);
}

const armOf = ({ landmarks: { shoulderPoint, wristPoint } }: StoodForm): StandArm => ({
  from: shoulderPoint,
  way: unit(minus(wristPoint, shoulderPoint)),
});

/** The same stand with the arms of another form of the same body. */
export const withArms = (stand: Stand, form: StoodForm): Stand => ({
  ...stand,
  obstacle: partsOf(form, withBothArms),
  arm: armOf(form),
});

/** A form to put a garment on: the torso, with arms where there are sleeves, and legs under a skirt. */
export function standOfForm(form: StoodForm, { arms = false, legs = false }: StandParts = {}): Stand {
  const torso = partsOf(form, ['torso']);
  const { hip, waist, underBust, bust, underarm } = form.levels;
  const { bustPoint, backNeckPoint } = form.landmarks;
  return {
    obstacle: arms ? partsOf(form, withBothArms) : torso,
    trunk: legs ? partsOf(form, ['torso', 'left leg', 'right leg']) : torso,
    torso,
    levels: { hip, waist, 'under-bust': underBust, bust },
    underarm,
    bustPoint,
    arm: armOf(form),
    top: backNeckPoint[1] + 40,
  };
}
