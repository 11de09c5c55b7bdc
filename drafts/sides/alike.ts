import { COINCIDENCE } from '../../engine/geometry/tolerance.ts';

/**
 * Whether two plain data say the same, numbers to within what counts as the same place (1e-5 mm): so pieces solved
 * twice are alike where nothing that was changed reaches them.
 */
export function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= COINCIDENCE;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const others = new Map(Object.entries(b));
  const own = Object.entries(a);
  return own.length === others.size && own.every(([key, value]) => alike(value, others.get(key)));
}

/** Left and right of each of some things, by name. Both sides of a draft make the same things. */
export function inPairs<T>(
  right: readonly T[],
  left: readonly T[],
  nameOf: (thing: T) => string,
): readonly { readonly right: T; readonly left: T }[] {
  const others = new Map(left.map((thing) => [nameOf(thing), thing]));
  return right.map((thing) => {
    const other = others.get(nameOf(thing));
    if (other === undefined || right.length !== left.length)
      throw new Error(`Right and left do not have the same "${nameOf(thing)}".`);
    return { right: thing, left: other };
  });
}
