import { type Bounds, boundingBox } from '../geometry/bounds.ts';
import { type Ink, shareBefore } from './ink.ts';
import { textWidth } from './text-size.ts';

/** Ink with the upright rectangle about it, to find quickly what falls on a page. */
export interface BoundedInk {
  readonly ink: Ink;
  readonly bounds: Bounds;
}

export const bounded = (ink: readonly Ink[]): readonly BoundedInk[] =>
  ink.map((drawn) => ({ ink: drawn, bounds: inkBounds(drawn) }));

/** The upright rectangle about some ink, its line width not counted; about text the room that is kept for it. */
export function inkBounds(ink: Ink): Bounds {
  switch (ink.kind) {
    case 'chain':
      return boundingBox(ink.curves);
    case 'circle':
      return around(ink.middle.x, ink.middle.y, ink.radius, ink.radius);
    case 'box':
      return {
        left: ink.corner.x,
        top: ink.corner.y,
        right: ink.corner.x + ink.width,
        bottom: ink.corner.y + ink.height,
      };
    case 'words': {
      const width = textWidth(ink.text, ink.size);
      const middle = ink.at.x + (0.5 - shareBefore(ink.anchored)) * width;
      const level = ink.at.y - ink.size / 3;
      const pivot = ink.turnedAbout;
      if (!pivot) return around(middle, level, width / 2, ink.size / 2);
      // A quarter turn to the left takes (x, y) from the pivot to (y, -x).
      return around(pivot.x + (level - pivot.y), pivot.y - (middle - pivot.x), ink.size / 2, width / 2);
    }
  }
}

const around = (x: number, y: number, halfWidth: number, halfHeight: number): Bounds => ({
  left: x - halfWidth,
  right: x + halfWidth,
  top: y - halfHeight,
  bottom: y + halfHeight,
});
