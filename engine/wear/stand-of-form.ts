import { distanceAt, distanceField } from '../form/distance-field.ts';
import type { Form } from '../form/form.ts';
import type { Stand } from './stand.ts';

/** Between nodes of the grid of distances, mm: cloth then lies within a tenth of a mm of where it should. */
const GRID = 8;

/** The torso of a form, to put on what has no sleeves: arms hang free of it. */
export function standOfForm(form: Pick<Form, 'surface' | 'levels' | 'landmarks'>, arms = false): Stand {
  const field = distanceField(form, { spacing: GRID, parts: ['torso'] });
  const whole = arms
    ? distanceField(form, { spacing: GRID, parts: ['torso', 'left arm', 'right arm'] })
    : field;
  const { waist, underBust, bust, underarm } = form.levels;
  return {
    obstacle: (x, y, z, out) => distanceAt(whole, x, y, z, out),
    torso: (x, y, z, out) => distanceAt(field, x, y, z, out),
    levels: { waist, 'under-bust': underBust, bust },
    underarm,
    bustPoint: form.landmarks.bustPoint,
    top: form.landmarks.backNeckPoint[1] + 40,
  };
}
