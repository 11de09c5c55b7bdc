import type { Term } from '../engine/constraints/relations.ts';
import type { SketchBuilder } from '../engine/constraints/sketch-builder.ts';
import { near } from '../engine/constraints/statements.ts';

/**
 * How much a millimetre away from its place counts against the bend of curves (per mm squared): `firm` where the
 * foundation has put a point, `loose` where it has only a level, `faint` where the point is merely to be somewhere.
 */
const weights = { firm: 0.05, loose: 0.02, faint: 0.002 } as const;

/** Wishes that a sum of coordinates stay near a value. */
export function keepNear(
  sketch: SketchBuilder,
  name: string,
  terms: readonly Term[],
  value: number,
  hold: keyof typeof weights,
): void {
  sketch.wish(near(name, terms, value, weights[hold]));
}
