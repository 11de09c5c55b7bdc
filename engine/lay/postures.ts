import { NO_TURN } from '../geometry/tolerance.ts';
import { convexParts, type Ring } from './convex-parts.ts';
import { doubledArea, inWay, type LayShape, type Way } from './problem.ts';

/** A shape in one of its ways, about the middle of its box. */
export interface Posture {
  readonly way: Way;
  /** What has to be taken from a place of the middle to get the move of the shape in its way. */
  readonly middle: { readonly x: number; readonly y: number };
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly ring: Ring;
  readonly parts: readonly Ring[];
}

/** The postures of a shape, each once: a rectangle turned by half a turn is the same again. */
export function posturesOf(shape: LayShape): Posture[] {
  const found: Posture[] = [];
  for (const way of shape.ways) {
    const put = shape.outline.map((corner) => inWay(corner, way));
    const right = doubledArea(put) < 0 ? put.toReversed() : put;
    const [xs, ys] = [right.map(({ x }) => x), right.map(({ y }) => y)];
    const [left, width] = [Math.min(...xs), Math.max(...xs)];
    const [top, height] = [Math.min(...ys), Math.max(...ys)];
    const middle = { x: (left + width) / 2, y: (top + height) / 2 };
    const ring = Float64Array.from(right.flatMap(({ x, y }) => [x - middle.x, y - middle.y]));
    const half = { halfWidth: (width - left) / 2, halfHeight: (height - top) / 2 };
    if (!found.some((other) => sameRing(other.ring, ring, 1, 1)))
      found.push({ way, middle, ...half, ring, parts: convexParts(ring) });
  }
  return found;
}

/** Whether one ring is the other with its coordinates multiplied by 1 or -1, whichever corner it begins with. */
export function sameRing(a: Ring, b: Ring, signX: 1 | -1, signY: 1 | -1): boolean {
  if (a.length !== b.length) return false;
  const count = a.length / 2;
  const step = signX * signY;
  const small = NO_TURN * a.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const alike = (i: number, j: number): boolean =>
    Math.abs((a[2 * i] ?? 0) - signX * (b[2 * j] ?? 0)) <= small &&
    Math.abs((a[2 * i + 1] ?? 0) - signY * (b[2 * j + 1] ?? 0)) <= small;
  for (let start = 0; start < count; start++) {
    let same = true;
    for (let i = 0; i < count && same; i++) same = alike(i, (start + step * i + 2 * count * count) % count);
    if (same) return true;
  }
  return false;
}
