import type { ClothSheet } from '../cloth/sheet.ts';

/**
 * By how much the cloth of some triangles (by number) is longer along a level line all round them than it lay flat, mm, wherever
 * it is longer: gathers beside it have cloth enough, and give it none.
 */
export function stretchedRound(
  { triangles, flat }: Pick<ClothSheet, 'triangles' | 'flat'>,
  x: Float64Array,
  of: Int32Array,
  height: number,
): number {
  let longer = 0;
  const line = new Float64Array(10);
  for (const t of of) {
    let ends = 0;
    for (let k = 0; k < 3; k++) {
      const next = (k + 1) % 3;
      const [a, b] = [3 * (triangles[3 * t + k] as number), 3 * (triangles[3 * t + next] as number)];
      const from = (x[a + 1] as number) - height;
      const to = (x[b + 1] as number) - height;
      if (from < 0 === to < 0) continue;
      const share = from / (from - to);
      const [p, q] = [6 * t + 2 * k, 6 * t + 2 * next];
      line[5 * ends] = between(x[a], x[b], share);
      line[5 * ends + 1] = between(x[a + 2], x[b + 2], share);
      line[5 * ends + 2] = between(flat[p], flat[q], share);
      line[5 * ends + 3] = between(flat[p + 1], flat[q + 1], share);
      ends++;
    }
    if (ends === 2) longer += Math.max(0, apart(line, 0) - apart(line, 2));
  }
  return longer;
}

const between = (from = 0, to = 0, share: number): number => from + share * (to - from);

/** The distance of two places that stand so far into the two ends of a line. */
const apart = (line: Float64Array, at: number): number =>
  Math.hypot(
    (line[at] as number) - (line[at + 5] as number),
    (line[at + 1] as number) - (line[at + 6] as number),
  );
