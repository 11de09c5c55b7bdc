import { distance, moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { heading, outward, scaled, unit, type Vector } from '../../engine/geometry/vector.ts';

/** Where a strap leaves a panel and where it crosses the shoulder. */
export interface StrapPath {
  /** The strap's corner at the neckline. */
  readonly inner: Point;
  /** The strap's corner at the armhole. */
  readonly outer: Point;
  /** The way the strap runs down onto the panel, one long. */
  readonly down: Vector;
  /** From the panel to the shoulder along the strap, mm. */
  readonly length: number;
}

/**
 * Lays a straight strap of `width` mm from a neckline corner up to the shoulder line, which starts at the side
 * neck and falls by `slope` radians; the strap crosses it `position` mm out. Its end is cut square.
 */
export function layStrap(
  neckCorner: Point,
  sideNeck: Point,
  slope: number,
  position: number,
  width: number,
): StrapPath {
  const crossing = moved(sideNeck, scaled(heading(slope), position));
  const down = unit(vectorBetween(crossing, neckCorner));
  return {
    inner: neckCorner,
    outer: moved(neckCorner, scaled(outward(down), width)),
    down,
    length: distance(neckCorner, crossing),
  };
}
