import type { Obstacle } from '../cloth/obstacle.ts';
import { distanceAt, distanceField } from '../form/distance-field.ts';
import type { Form, PartName } from '../form/form.ts';
import { minus, unit } from '../geometry/space.ts';
import type { Stand } from './stand.ts';

/** Between nodes of the grid of distances, mm: cloth then lies within a tenth of a mm of where it should. */
const GRID = 8;

/** What of the body a garment lies on. */
export interface StandParts {
  readonly arms?: boolean;
  readonly legs?: boolean;
}

/** A form to put a garment on: the torso, with arms where there are sleeves, and legs under a skirt. */
export function standOfForm(
  form: Pick<Form, 'surface' | 'levels' | 'landmarks'>,
  { arms = false, legs = false }: StandParts = {},
): Stand {
  const only = distanceField(form, { spacing: GRID, parts: ['torso'] });
  const torso: Obstacle = (x, y, z, out) => distanceAt(only, x, y, z, out);
  const grown = (more: readonly PartName[]): Obstacle => {
    if (more.length === 0) return torso;
    const field = distanceField(form, { spacing: GRID, parts: ['torso', ...more] });
    return (x, y, z, out) => distanceAt(field, x, y, z, out);
  };
  const { hip, waist, underBust, bust, underarm } = form.levels;
  const { shoulderPoint, wristPoint, bustPoint, backNeckPoint } = form.landmarks;
  return {
    obstacle: arms ? grown(['left arm', 'right arm']) : torso,
    trunk: legs ? grown(['left leg', 'right leg']) : torso,
    torso,
    levels: { hip, waist, 'under-bust': underBust, bust },
    underarm,
    bustPoint,
    arm: { from: shoulderPoint, way: unit(minus(wristPoint, shoulderPoint)) },
    top: backNeckPoint[1] + 40,
  };
}
