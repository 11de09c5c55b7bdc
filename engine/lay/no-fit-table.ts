import { DepthField } from './depth-field.ts';
import { noFit } from './no-fit.ts';
import { type Posture, sameRing } from './postures.ts';

/**
 * For every two postures how deep they overlap, by the difference of their places. Postures that are others mirrored or
 * turned round share their fields: the region of two swapped is the region turned round.
 */
export interface NoFitTable {
  readonly count: number;
  /** For moving * count + fixed: half the box of the region and its middle. */
  readonly middleX: Float64Array;
  readonly middleY: Float64Array;
  readonly halfX: Float64Array;
  readonly halfY: Float64Array;
  readonly signX: Float64Array;
  readonly signY: Float64Array;
  readonly fields: readonly DepthField[];
}

const signs = [
  [1, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
] as const;

/** The table of some postures; places nearer to each other than `margin` count as overlapping. */
export function noFitTable(postures: readonly Posture[], margin: number): NoFitTable {
  const count = postures.length;
  const size = count * count;
  const table = {
    count,
    middleX: new Float64Array(size),
    middleY: new Float64Array(size),
    halfX: new Float64Array(size),
    halfY: new Float64Array(size),
    signX: new Float64Array(size),
    signY: new Float64Array(size),
  };
  const fields: DepthField[] = [];
  // Which posture each becomes when its coordinates change their signs.
  const images = signs.map(([signX, signY]) =>
    postures.map((posture) =>
      postures.findIndex((other) => sameRing(other.ring, posture.ring, signX, signY)),
    ),
  );
  for (const [m, moving] of postures.entries())
    for (const [f, fixed] of postures.entries()) {
      if (fields[m * count + f]) continue;
      const region = noFit(fixed.parts, moving.parts);
      const field = new DepthField(region, margin);
      for (const [s, [signX, signY]] of signs.entries()) {
        const [a, b] = [images[s]?.[m] ?? -1, images[s]?.[f] ?? -1];
        if (a < 0 || b < 0) continue;
        for (const [row, column, turned] of [
          [a, b, 1],
          [b, a, -1],
        ] as const) {
          const at = row * count + column;
          if (fields[at]) continue;
          fields[at] = field;
          table.signX[at] = signX * turned;
          table.signY[at] = signY * turned;
          table.middleX[at] = ((region.left + region.right) / 2) * signX * turned;
          table.middleY[at] = ((region.top + region.bottom) / 2) * signY * turned;
          table.halfX[at] = (region.right - region.left) / 2 + margin;
          table.halfY[at] = (region.bottom - region.top) / 2 + margin;
        }
      }
    }
  return { ...table, fields };
}
