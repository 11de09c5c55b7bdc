import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import { ellipticalArc } from './elliptical-arc.ts';
import { pathSegments, type Segment } from './path-segments.ts';

/** Curves read from the `d` attribute of a path, or the reason why they cannot be. */
export type PathReading =
  | { readonly ok: true; readonly curves: readonly Curve[]; readonly closed: boolean }
  | { readonly ok: false; readonly reason: string };

/** More numbers than any pattern line has; a file that holds more is damaged. */
const mostNumbers = 6_000;

/**
 * Reads one chain of curves, absolute or relative, `scale` times as large as written (mm). Quadratics become the
 * cubics that draw the same line exactly. A second start within the path is refused: an edge is one chain. So are
 * arcs, which no pattern line written here has.
 */
export function readPath(d: string, scale = 1): PathReading {
  const segments = pathSegments(d, mostNumbers);
  if (typeof segments === 'string') return { ok: false, reason: segments };
  if (segments.length === 0) return { ok: false, reason: 'it does not start with a move' };
  const pen = new PathReader(scale);
  for (const [index, segment] of segments.entries()) {
    const [letter] = segment;
    if (pen.closed) return { ok: false, reason: 'it goes on after it was closed' };
    if (index > 0 && letter === 'M') return { ok: false, reason: 'it is made of several lines' };
    if (letter === 'A') return { ok: false, reason: 'it holds the command “A”' };
    pen.follow(segment);
  }
  if (pen.curves.length === 0) return { ok: false, reason: 'it draws nothing' };
  return { ok: true, curves: pen.curves, closed: pen.closed };
}

/** Follows the steps of a path one by one and keeps the curves they draw. */
class PathReader {
  readonly curves: Curve[] = [];
  closed = false;
  readonly #scale: number;
  #start = point(0, 0);
  #here = point(0, 0);

  constructor(scale: number) {
    this.#scale = scale;
  }

  follow([letter, ...numbers]: Segment): void {
    const n = (i: number): number => this.#scale * (numbers[i] ?? 0);
    const at = (i: number): Point => point(n(i), n(i + 1));
    if (letter === 'M') this.#start = this.#here = at(0);
    else if (letter === 'L') this.#line(at(0));
    else if (letter === 'H') this.#line(point(n(0), this.#here.y));
    else if (letter === 'V') this.#line(point(this.#here.x, n(0)));
    else if (letter === 'C') this.#cubic(at(0), at(2), at(4));
    else if (letter === 'Q') this.#quadratic(at(0), at(2));
    else if (letter === 'A') this.#arc(numbers, at(5));
    else this.#close();
  }

  #close(): void {
    if (this.#here.x !== this.#start.x || this.#here.y !== this.#start.y) this.#line(this.#start);
    this.closed = true;
  }

  #line(to: Point): void {
    this.curves.push({ kind: 'line', from: this.#here, to });
    this.#here = to;
  }

  #cubic(handle1: Point, handle2: Point, to: Point): void {
    this.curves.push({ kind: 'cubic', from: this.#here, handle1, handle2, to });
    this.#here = to;
  }

  #quadratic(handle: Point, to: Point): void {
    const towards = (p: Point): Point =>
      point(p.x + (2 / 3) * (handle.x - p.x), p.y + (2 / 3) * (handle.y - p.y));
    this.#cubic(towards(this.#here), towards(to), to);
  }

  #arc([rx = 0, ry = 0, degrees = 0, large, sweep]: readonly number[], to: Point): void {
    const radii = { rx: rx * this.#scale, ry: ry * this.#scale };
    const turn = { tilt: (degrees * Math.PI) / 180, large: large === 1, clockwise: sweep === 1 };
    this.curves.push(...ellipticalArc(this.#here, to, { ...radii, ...turn }));
    this.#here = to;
  }
}

/** Chains of curves read from the `d` attribute of any path, in its own units, or the reason why they cannot be. */
export type ChainsReading =
  | { readonly ok: true; readonly chains: readonly PathChain[] }
  | { readonly ok: false; readonly reason: string };

export interface PathChain {
  readonly curves: readonly Curve[];
  readonly closed: boolean;
}

/**
 * Reads a path that someone else drew: any number of chains, elliptical arcs among them (as cubics, to a millionth
 * of their radius). Holds no more than `most` numbers.
 */
export function readChains(d: string, most: number): ChainsReading {
  const segments = pathSegments(d, most);
  if (typeof segments === 'string') return { ok: false, reason: segments };
  const chains: PathChain[] = [];
  let pen = new PathReader(1);
  let start: Segment = ['M', 0, 0];
  for (const segment of segments) {
    const [letter] = segment;
    if (pen.closed || letter === 'M') {
      if (pen.curves.length > 0) chains.push({ curves: pen.curves, closed: pen.closed });
      pen = new PathReader(1);
      // What follows a closed chain without a move begins where that one did.
      pen.follow(start);
    }
    if (letter === 'M') start = segment;
    pen.follow(segment);
  }
  if (pen.curves.length > 0) chains.push({ curves: pen.curves, closed: pen.closed });
  return { ok: true, chains };
}
