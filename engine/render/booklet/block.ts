import { type Point, point } from '../../geometry/point.ts';
import { type Ink, stroke } from '../ink.ts';

/** Something on a page whose height is known before its place is; mm. */
export interface Block {
  readonly height: number;
  /** Its ink when its top left corner stands at a point. */
  readonly ink: (at: Point) => readonly Ink[];
}

/** Blocks below each other. */
export const stack = (...blocks: readonly Block[]): Block => ({
  height: blocks.reduce((sum, { height }) => sum + height, 0),
  ink: (at) => {
    let top = at.y;
    return blocks.flatMap(({ height, ink }) => {
      const drawn = ink(point(at.x, top));
      top += height;
      return drawn;
    });
  },
});

/** Two blocks beside each other, the second `across` mm to the right of the first. */
export const besideEachOther = (left: Block, across: number, right: Block): Block => ({
  height: Math.max(left.height, right.height),
  ink: (at) => [...left.ink(at), ...right.ink(point(at.x + across, at.y))],
});

/** White. */
export const space = (height: number): Block => ({ height, ink: () => [] });

/** A thin line across a width, with white above and below. */
export const rule = (width: number): Block => ({
  height: 4,
  ink: ({ x, y }) => [stroke('level', point(x, y + 1.5), point(x + width, y + 1.5))],
});
