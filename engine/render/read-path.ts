import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';

/** Curves read from the `d` attribute of a path, or the reason why they cannot be. */
export type PathReading =
  | { readonly ok: true; readonly curves: readonly Curve[]; readonly closed: boolean }
  | { readonly ok: false; readonly reason: string };

/** How many numbers each path command takes (SVG 2, section 9.3). Arcs are no pattern line and are refused. */
const arity: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, Z: 0 };

/** More curves than any pattern line has; a file that holds more is damaged. */
const mostNumbers = 6_000;

const token = /([A-Za-z])|([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([\s,]+)|([\s\S])/g;

/**
 * Reads one chain of curves, absolute or relative, `scale` times as large as written (mm). Quadratics become the
 * cubics that draw the same line exactly. A second start within the path is refused: an edge is one chain.
 */
export function readPath(d: string, scale = 1): PathReading {
  const commands = splitCommands(d);
  if (typeof commands === 'string') return { ok: false, reason: commands };
  const first = commands[0];
  if (first?.letter.toUpperCase() !== 'M') return { ok: false, reason: 'it does not start with a move' };
  const pen = new PathReader(scale);
  for (const [index, command] of commands.entries()) {
    if (pen.closed) return { ok: false, reason: 'it goes on after it was closed' };
    if (index > 0 && command.letter.toUpperCase() === 'M')
      return { ok: false, reason: 'it is made of several lines' };
    pen.follow(command.letter, command.numbers);
  }
  if (pen.curves.length === 0) return { ok: false, reason: 'it draws nothing' };
  return { ok: true, curves: pen.curves, closed: pen.closed };
}

interface Command {
  readonly letter: string;
  readonly numbers: readonly number[];
}

/** The commands with their numbers, repeated numbers split into repeated commands; a reason when it cannot be. */
function splitCommands(d: string): Command[] | string {
  const read: { letter: string; numbers: number[] }[] = [];
  let count = 0;
  for (const [text, letter, number, , other] of d.matchAll(token)) {
    if (other !== undefined) return `it holds “${other}”`;
    if (letter !== undefined) {
      if (arity[letter.toUpperCase()] === undefined) return `it holds the command “${letter}”`;
      read.push({ letter, numbers: [] });
    } else if (number !== undefined) {
      const value = Number(text);
      if (!Number.isFinite(value) || Math.abs(value) > 1e6) return `the number ${text} is too large`;
      read.at(-1)?.numbers.push(value);
      if (++count > mostNumbers) return 'it is too long';
    }
  }
  const commands: Command[] = [];
  for (const { letter, numbers } of read) {
    const size = arity[letter.toUpperCase()] ?? 0;
    const whole = size === 0 ? numbers.length === 0 : numbers.length > 0 && numbers.length % size === 0;
    if (!whole) return `“${letter}” is followed by ${numbers.length} numbers`;
    if (size === 0) commands.push({ letter, numbers });
    for (let i = 0; size > 0 && i < numbers.length; i += size)
      commands.push({ letter: i === 0 ? letter : afterFirst(letter), numbers: numbers.slice(i, i + size) });
  }
  return commands;
}

/** Further numbers after a move are lines. */
const afterFirst = (letter: string): string => (letter === 'M' ? 'L' : letter === 'm' ? 'l' : letter);

/** Follows path commands one by one and keeps the curves they draw. */
class PathReader {
  readonly curves: Curve[] = [];
  closed = false;
  private readonly scale: number;
  private start: Point = point(0, 0);
  private here: Point = point(0, 0);
  /** The last handle and the kind of curve it belonged to, for the smooth commands S and T. */
  private last: { readonly handle: Point; readonly of: 'cubic' | 'quadratic' } | undefined;

  constructor(scale: number) {
    this.scale = scale;
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

  private mirrored(of: 'cubic' | 'quadratic'): Point {
    if (this.last?.of !== of) return this.here;
    return point(2 * this.here.x - this.last.handle.x, 2 * this.here.y - this.last.handle.y);
  }
}
