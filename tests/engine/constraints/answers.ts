import type { Solution } from '../../../engine/constraints/solution.ts';
import type { Point } from '../../../engine/geometry/point.ts';

/** Where a named point came to lie. */
export function placed({ points }: Solution, name: string): Point {
  const at = points[name];
  if (!at) throw new Error(`No point "${name}".`);
  return at;
}

/** What a named scalar came to be. */
export function valued({ scalars }: Solution, name: string): number {
  const value = scalars[name];
  if (value === undefined) throw new Error(`No scalar "${name}".`);
  return value;
}
