import type { Point } from '../geometry/point.ts';

/**
 * A way in which a shape may lie: first mirrored in the x axis (y becomes -y) or not, then turned by a number of degrees
 * (from x towards y). Quarter turns are exact.
 */
export interface Way {
  readonly turn: number;
  readonly mirrored: boolean;
}

/** A shape to lay, so and so often. Lengths in any one unit. */
export interface LayShape {
  readonly name: string;
  /** The corners of a simple polygon, in either direction; the first is not repeated. */
  readonly outline: readonly Point[];
  readonly count: number;
  /** The ways in which it may lie, each copy for itself. */
  readonly ways: readonly Way[];
  /** In every way the copies stay with their lowest y on the edge y = 0 of the strip, where the cloth is folded. */
  readonly onFold: boolean;
  /** On a strip with a repeat: how far behind the beginning of one every copy lies (its `x`). */
  readonly phase?: number;
  /** On a strip with a repeat across it: how far behind the beginning of one a copy lies (its `y`); ahead where its way turns y round. */
  readonly phaseAcross?: number;
}

/** Shapes and the strip they are to lie on: y from 0 to `width`, x from 0 to a length that is to be short. */
export interface LayProblem {
  readonly width: number;
  /** After so much along the strip its look repeats, and shapes may lie only where it is what they ask for. */
  readonly repeat?: number;
  /** The same from y = 0 across the strip, where it looks the same from either side; shapes on the fold lie as they lie. */
  readonly repeatAcross?: number;
  readonly shapes: readonly LayShape[];
}

/** Where one copy lies: its shape put in its way, then moved by `x`, `y`. */
export interface Placement {
  readonly shape: number;
  readonly copy: number;
  readonly way: Way;
  readonly x: number;
  readonly y: number;
}

/** A lay: every copy of every shape, and the length they take. */
export interface Lay {
  readonly length: number;
  readonly placements: readonly Placement[];
}

/** A point put in a way about the origin. */
export function inWay({ x, y }: Point, { turn, mirrored }: Way): Point {
  const up = mirrored ? -y : y;
  const quarter = ((turn % 360) + 360) % 360;
  if (quarter === 0) return { x, y: up };
  if (quarter === 90) return { x: -up, y: x };
  if (quarter === 180) return { x: -x, y: -up };
  if (quarter === 270) return { x: up, y: -x };
  const angle = (turn * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * c - up * s, y: x * s + up * c };
}

/** The corners of a copy where it lies, as the doubles that are proven and written. */
export const placedOutline = (shape: LayShape, { way, x, y }: Placement): Point[] =>
  shape.outline.map((corner) => {
    const put = inWay(corner, way);
    return { x: put.x + x, y: put.y + y };
  });

/** Twice the area of a polygon, positive when it turns from x towards y. */
export function doubledArea(outline: readonly Point[]): number {
  let sum = 0;
  const origin = outline[0];
  if (!origin) return 0;
  for (let i = 1; i + 1 < outline.length; i++) {
    const [a, b] = [outline[i] ?? origin, outline[i + 1] ?? origin];
    sum += (a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x);
  }
  return sum;
}

/** The area that all copies take together. */
export const areaOf = ({ shapes }: LayProblem): number =>
  shapes.reduce((sum, { outline, count }) => sum + (count * Math.abs(doubledArea(outline))) / 2, 0);

/** The share of the strip that is used: the area of all copies over that of the strip as far as they reach. */
export const densityOf = (problem: LayProblem, length: number): number =>
  areaOf(problem) / (problem.width * length);

/** How far a copy lies from where the repeats of the strip want it, along and across. */
export function offRepeat(
  { repeat = 0, repeatAcross = 0 }: LayProblem,
  shape: LayShape,
  { way, x, y }: Pick<Placement, 'way' | 'x' | 'y'>,
): number {
  const across = shape.onFold ? 0 : offLattice(y - phaseIn(shape, way), repeatAcross);
  return Math.max(offLattice(x - (shape.phase ?? 0), repeat), across);
}

/** How far behind the beginning of a repeat across the strip a shape lies in one of its ways: mirrored or turned over, ahead of it. */
export const phaseIn = ({ phaseAcross = 0 }: Pick<LayShape, 'phaseAcross'>, way: Way): number =>
  inWay({ x: 0, y: phaseAcross }, way).y;

function offLattice(at: number, repeat: number): number {
  if (repeat === 0) return 0;
  const repeats = at / repeat;
  return Math.abs(repeats - Math.round(repeats)) * repeat;
}
