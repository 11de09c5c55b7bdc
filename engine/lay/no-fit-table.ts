import { DepthFields } from './depth-fields.ts';
import { type NoFit, noFit } from './no-fit.ts';
import { type Posture, sameRing } from './postures.ts';

/**
 * For every two postures how deep they overlap, by the difference of their places. Postures that are others mirrored or
 * turned round share their fields: the region of two swapped is the region turned round.
 */
export interface NoFitTable {
  readonly count: number;
  /** For moving * count + fixed: the box of the region (left, right, top, bottom), 4 numbers each. */
  readonly boxes: Float64Array;
  readonly signX: Float64Array;
  readonly signY: Float64Array;
  /** Which field tells the depth. */
  readonly field: Int32Array;
  readonly fields: DepthFields;
}

const signs = [
  [1, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
] as const;

/** The table of some postures. */
export function noFitTable(postures: readonly Posture[]): NoFitTable {
  const count = postures.length;
  const boxes = new Float64Array(4 * count * count);
  const signX = new Float64Array(count * count);
  const signY = new Float64Array(count * count);
  const field = new Int32Array(count * count).fill(-1);
  const regions: NoFit[] = [];
  // Which posture each becomes when its coordinates change their signs.
  const images = signs.map(([x, y]) =>
    postures.map((posture) => postures.findIndex((other) => sameRing(other.ring, posture.ring, x, y))),
  );
  for (const [m, moving] of postures.entries())
    for (const [f, fixed] of postures.entries()) {
      if (field[m * count + f] !== -1) continue;
      const region = noFit(fixed.parts, moving.parts);
      regions.push(region);
      const xs = [region.left, region.right];
      const ys = [region.top, region.bottom];
      for (const [s, [x, y]] of signs.entries()) {
        const [a, b] = [images[s]?.[m] ?? -1, images[s]?.[f] ?? -1];
        if (a < 0 || b < 0) continue;
        for (const [row, column, turned] of [
          [a, b, 1],
          [b, a, -1],
        ] as const) {
          const at = row * count + column;
          if (field[at] !== -1) continue;
          field[at] = regions.length - 1;
          signX[at] = x * turned;
          signY[at] = y * turned;
          const [across, along] = [
            xs.map((value) => value * x * turned),
            ys.map((value) => value * y * turned),
          ];
          boxes.set(
            [Math.min(...across), Math.max(...across), Math.min(...along), Math.max(...along)],
            4 * at,
          );
        }
      }
    }
  return { count, boxes, signX, signY, field, fields: new DepthFields(regions) };
}
