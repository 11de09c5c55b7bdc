import type { Body } from '../body/body.ts';
import { notchesOf } from '../finishing/notches.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Styling } from '../pattern/styling.ts';
import { type GarmentShape, isAlike, wholeShape } from './garment-shape.ts';

/** Whether a garment of that shape, drafted for a body and styling, is another one, or none, where it is styled otherwise. */
export function makesAnother(
  draft: Draft,
  body: Body,
  shape: GarmentShape,
  styling: Styling,
  otherwise: Styling,
): boolean {
  // How notches are cut is drawn once the garment is made.
  if (notchesOf(otherwise) !== notchesOf(styling)) return true;
  const drawn = draft.draw(body, otherwise);
  return !drawn.ok || !isAlike(wholeShape(drawn.value), shape);
}
