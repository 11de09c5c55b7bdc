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
  const torso = distanceField(form, { spacing: GRID, parts: ['torso'] });
  const parts: readonly PartName[] = [
    'torso',
    ...(arms ? (['left arm', 'right arm'] as const) : []),
    ...(legs ? (['left leg', 'right leg'] as const) : []),
  ];
  const whole = parts.length > 1 ? distanceField(form, { spacing: GRID, parts }) : torso;
  const { hip, waist, underBust, bust, underarm } = form.levels;
  const { shoulderPoint, wristPoint, bustPoint, backNeckPoint } = form.landmarks;
  return {
    obstacle: (x, y, z, out) => distanceAt(whole, x, y, z, out),
    torso: (x, y, z, out) => distanceAt(torso, x, y, z, out),
    levels: { hip, waist, 'under-bust': underBust, bust },
    underarm,
    bustPoint,
    arm: { from: shoulderPoint, way: unit(minus(wristPoint, shoulderPoint)) },
    top: backNeckPoint[1] + 40,
  };
}
