import {
  compose,
  fromDefinition,
  fromTransformAttribute,
  identity,
  type Matrix,
} from 'transformation-matrix';
import type { Transform } from '../geometry/transform.ts';

/** The matrix of an SVG transform: x' = a x + c y + e, y' = b x + d y + f. */
export type { Matrix } from 'transformation-matrix';

export const unmoved: Matrix = identity();

/** The matrix that does `inner` first and then `outer`. */
export const product = (outer: Matrix, inner: Matrix): Matrix => compose(outer, inner);

/** A matrix as a transform of points; cubics follow it exactly. */
export const byMatrix =
  ({ a, b, c, d, e, f }: Matrix): Transform =>
  ({ x, y }) => ({ x: a * x + c * y + e, y: b * x + d * y + f });

/** Longer ones nobody writes; they would only take time. */
const LONGEST = 2_000;

/** Reads a `transform` attribute (CSS Transforms 1, section 8); nothing when it is none. */
export function readTransform(text: string): Matrix | undefined {
  // CSS lets lengths and angles bear units, of which px and deg change nothing, and steps follow each other without a gap.
  const bare = text.replaceAll(/(?<=[\d.])(?:px|deg)(?=[\s,)])/g, '');
  const whole = bare.replaceAll(')', ') ').trim();
  if (whole === '' || whole === 'none') return unmoved;
  if (whole.length > LONGEST) return undefined;
  try {
    const matrix = compose(fromDefinition(fromTransformAttribute(whole)));
    return Object.values(matrix).every((value) => Math.abs(value) < 1e9) ? matrix : undefined;
  } catch {
    return undefined;
  }
}
