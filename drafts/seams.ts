import type { EdgeRef, Seam } from '../engine/pattern/seam.ts';

/** An edge of a piece, walked as it runs. */
export const edge = (piece: string, name: string): EdgeRef => ({ piece, edge: name });

/** An edge of a piece, walked the other way. */
export const backwards = (piece: string, name: string): EdgeRef => ({ piece, edge: name, reversed: true });

/** Edges sewn together as long as each other: on both sides one after the other, from one end of the seam. */
export const plainSeam = (name: string, a: readonly EdgeRef[], b: readonly EdgeRef[]): Seam =>
  easedSeam(name, a, b, 0);

/** Edges of which the first is longer by `ease` (mm), or held short where that is less than nothing. */
export const easedSeam = (
  name: string,
  a: readonly EdgeRef[],
  b: readonly EdgeRef[],
  ease: number,
): Seam => ({ name, a, b, ease, gatherRatio: 1 });

/** Edges of which the first is gathered to the second, `ratio` mm of it to each mm. */
export const gatheredSeam = (
  name: string,
  a: readonly EdgeRef[],
  b: readonly EdgeRef[],
  ratio: number,
): Seam => ({ name, a, b, ease: 0, gatherRatio: ratio });
