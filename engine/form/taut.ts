import { tautChain, tautHalf } from './hull.ts';

/**
 * Tapes laid on the form. A tape lies taut in its plane: it bridges hollows, as the convex hull of the section does. A path
 * holds x, y, z one after the other; a tape round the body holds its left half only, and its length is that of both.
 */
export interface Path {
  readonly points: readonly number[];
  readonly length: number;
  /** The points are half of a loop that the mirror closes. */
  readonly round: boolean;
}

/** Points of a plane section: where they lie in the plane (along, outward) and in space. */
export interface SectionCut {
  readonly u: number[];
  readonly v: number[];
  readonly space: number[];
}

export const emptyCut = (): SectionCut => ({ u: [], v: [], space: [] });

export const add = (cut: SectionCut, u: number, v: number, x: number, y: number, z: number): void => {
  cut.u.push(u);
  cut.v.push(v);
  cut.space.push(x, y, z);
};

/** A tape over an open cut, from its first point to its last. */
export function over(cut: SectionCut): Path {
  return pathOf(cut, tautChain(cut.u, cut.v), false, 0);
}

/** A tape round half a loop that its mirror image in x = 0 closes. `u` is x. */
export function round(cut: SectionCut): Path {
  const chain = tautHalf(cut.u, cut.v);
  const ends = (cut.u[chain[0] as number] as number) + (cut.u[chain.at(-1) as number] as number);
  return pathOf(cut, chain, true, ends);
}

function pathOf({ u, v, space }: SectionCut, chain: readonly number[], isRound: boolean, ends: number): Path {
  const points: number[] = [];
  let length = ends;
  for (const [k, i] of chain.entries()) {
    points.push(space[3 * i] as number, space[3 * i + 1] as number, space[3 * i + 2] as number);
    const before = chain[k - 1];
    if (before !== undefined)
      length += Math.hypot(
        (u[i] as number) - (u[before] as number),
        (v[i] as number) - (v[before] as number),
      );
  }
  return { points, length: isRound ? 2 * length : length, round: isRound };
}
