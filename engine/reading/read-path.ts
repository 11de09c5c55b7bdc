import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import { ellipticalArc } from './elliptical-arc.ts';
import { splitCommands } from './path-commands.ts';

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
  const commands = splitCommands(d, mostNumbers);
  if (typeof commands === 'string') return { ok: false, reason: commands };
  const first = commands[0];
  if (first?.letter.toUpperCase() !== 'M') return { ok: false, reason: 'it does not start with a move' };
  const pen = new PathReader(scale);
  for (const [index, command] of commands.entries()) {
    if (pen.closed) return { ok: false, reason: 'it goes on after it was closed' };
    const kind = command.letter.toUpperCase();
    if (index > 0 && kind === 'M') return { ok: false, reason: 'it is made of several lines' };
    if (kind === 'A') return { ok: false, reason: `it holds the command “${command.letter}”` };
    pen.follow(command.letter, command.numbers);
  }
  if (pen.curves.length === 0) return { ok: false, reason: 'it draws nothing' };
  return { ok: true, curves: pen.curves, closed: pen.closed };
}

/** Follows path commands one by one and keeps the curves they draw. */
class PathReader {
  readonly curves: Curve[] = [];
  closed = false;
  private readonly scale: number;
  private start: Point;
  here: Point;
  /** The last handle and the kind of curve it belonged to, for the smooth commands S and T. */
  private last: { readonly handle: Point; readonly of: 'cubic' | 'quadratic' } | undefined;

  constructor(scale: number, here: Point = point(0, 0)) {
    this.scale = scale;
    this.here = here;
    this.start = here;
  }

  follow(letter: string, numbers: readonly number[]): void {
    const kind = letter.toUpperCase();
    const from = letter === kind ? point(0, 0) : this.here;
    const x = (i: number): number => from.x + this.scale * (numbers[i] ?? 0);
    const y = (i: number): number => from.y + this.scale * (numbers[i] ?? 0);
    const at = (i: number): Point => point(x(i), y(i + 1));
    if (kind === 'M') this.here = at(0);
    else if (kind === 'L') this.line(at(0));
    else if (kind === 'H') this.line(point(x(0), this.here.y));
    else if (kind === 'V') this.line(point(this.here.x, y(0)));
    else if (kind === 'C') this.cubic(at(0), at(2), at(4));
    else if (kind === 'S') this.cubic(this.mirrored('cubic'), at(0), at(2));
    else if (kind === 'Q') this.quadratic(at(0), at(2));
    else if (kind === 'A') this.arc(numbers, at(5));
    else if (kind === 'T') this.quadratic(this.mirrored('quadratic'), at(0));
    else this.close();
    if (kind === 'M') this.start = this.here;
  }

  private close(): void {
    if (this.here.x !== this.start.x || this.here.y !== this.start.y) this.line(this.start);
    this.closed = true;
  }

  private line(to: Point): void {
    this.curves.push({ kind: 'line', from: this.here, to });
    this.here = to;
    this.last = undefined;
  }

  private cubic(handle1: Point, handle2: Point, to: Point): void {
    this.curves.push({ kind: 'cubic', from: this.here, handle1, handle2, to });
    this.here = to;
    this.last = { handle: handle2, of: 'cubic' };
  }

  private quadratic(handle: Point, to: Point): void {
    const towards = (p: Point): Point =>
      point(p.x + (2 / 3) * (handle.x - p.x), p.y + (2 / 3) * (handle.y - p.y));
    this.cubic(towards(this.here), towards(to), to);
    this.last = { handle, of: 'quadratic' };
  }

  private arc([rx = 0, ry = 0, degrees = 0, large, sweep]: readonly number[], to: Point): void {
    const radii = { rx: rx * this.scale, ry: ry * this.scale };
    const turn = { tilt: (degrees * Math.PI) / 180, large: large === 1, clockwise: sweep === 1 };
    this.curves.push(...ellipticalArc(this.here, to, { ...radii, ...turn }));
    this.here = to;
    this.last = undefined;
  }

  private mirrored(of: 'cubic' | 'quadratic'): Point {
    if (this.last?.of !== of) return this.here;
    return point(2 * this.here.x - this.last.handle.x, 2 * this.here.y - this.last.handle.y);
  }
}

/** Chains of curves read from the `d` attribute of any path, in its own units, or the reason why they cannot be. */
export type ChainsReading =
  | { readonly ok: true; readonly chains: readonly Chain[] }
  | { readonly ok: false; readonly reason: string };

export interface Chain {
  readonly curves: readonly Curve[];
  readonly closed: boolean;
}

/**
 * Reads a path that someone else drew: any number of chains, elliptical arcs among them (as cubics, to a millionth
 * of their radius). Holds no more than `most` numbers.
 */
export function readChains(d: string, most: number): ChainsReading {
  const commands = splitCommands(d, most);
  if (typeof commands === 'string') return { ok: false, reason: commands };
  if (commands.length > 0 && commands[0]?.letter.toUpperCase() !== 'M')
    return { ok: false, reason: 'it does not start with a move' };
  const chains: Chain[] = [];
  let pen = new PathReader(1);
  for (const { letter, numbers } of commands) {
    if (pen.closed || letter.toUpperCase() === 'M') {
      if (pen.curves.length > 0) chains.push({ curves: pen.curves, closed: pen.closed });
      pen = new PathReader(1, pen.here);
    }
    pen.follow(letter, numbers);
  }
  if (pen.curves.length > 0) chains.push({ curves: pen.curves, closed: pen.closed });
  return { ok: true, chains };
}
