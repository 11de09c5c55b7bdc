import type { Solution } from '../constraints/solution.ts';
import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Step } from './garment.ts';
import type { Ground, Unit } from './quantity.ts';
import { stepSource } from './step-source.ts';

/** A step as it was taken. Its words are put together when the draft is done. */
export interface Taken {
  readonly title: string;
  readonly text: () => string;
  readonly from: readonly Ground[];
  readonly source?: string;
  readonly cited?: string | undefined;
  readonly result?: { readonly formula?: () => string; readonly value: number; readonly unit: Unit };
}

interface Entry extends Taken {
  readonly heading: string | undefined;
  readonly points: { readonly on: string; readonly name: string; readonly at: Point }[];
  readonly lines: { readonly on: string; readonly name: string; readonly curves: readonly Curve[] }[];
}

/** The steps of a draft in the order in which they are taken, and what each puts on paper. */
export interface StepLog {
  /** Notes a step; its number, from 1. */
  readonly take: (step: Taken) => number;
  /** The steps from here on belong to this part of the drawing. */
  readonly heading: (name: string) => void;
  /** The latest step places a point on a drawing. */
  readonly point: (on: string, name: string, at: Point) => Point;
  /** The latest step draws a line. */
  readonly line: (on: string, name: string, curves: readonly Curve[]) => void;
  /** The latest step draws lines that are known once the sketch is solved. */
  readonly curves: (on: string, names: readonly string[]) => void;
  /** Gives the lines asked for by `curves` that a solution has. */
  readonly solved: (solution: Pick<Solution, 'curves'>) => void;
  /** The step that placed a point, where one did. */
  readonly placedBy: (at: Point) => Ground | undefined;
  /** All steps so far. */
  readonly steps: () => readonly Step[];
}

/** Starts an empty log. */
export function stepLog(): StepLog {
  const entries: Entry[] = [];
  const placed = new Map<Point, number>();
  let awaited: { readonly entry: Entry; readonly on: string; readonly curve: string }[] = [];
  let heading: string | undefined;
  const latest = (): Entry => {
    const entry = entries.at(-1);
    if (!entry) throw new Error('A step comes first, then what it draws.');
    return entry;
  };
  return {
    take: (step) => entries.push({ ...step, heading, points: [], lines: [] }),
    heading: (name) => {
      heading = name;
    },
    point: (on, name, at) => {
      latest().points.push({ on, name, at });
      placed.set(at, entries.length);
      return at;
    },
    line: (on, name, curves) => {
      latest().lines.push({ on, name, curves });
    },
    curves: (on, names) => {
      const entry = latest();
      awaited.push(...names.map((curve) => ({ entry, on, curve })));
    },
    solved: ({ curves }) => {
      const unknown = awaited.filter(({ entry, on, curve }) => {
        const found = curves[curve];
        if (found) entry.lines.push({ on, name: curve, curves: [found] });
        return !found;
      });
      awaited = unknown;
    },
    placedBy: (at) => {
      const number = placed.get(at);
      const entry = number === undefined ? undefined : entries[number - 1];
      return number === undefined || !entry ? undefined : asGround(entry, number);
    },
    steps: () => entries.map((entry, i) => written(entry, i + 1)),
  };
}

/** A step as what a later one was found from. One without a number gives none. */
const asGround = ({ title, result }: Entry, number: number): Ground => ({
  name: title,
  origin: { kind: 'step', number },
  ...(result ? { value: result.value, unit: result.unit } : {}),
});

function written(entry: Entry, number: number): Step {
  const { heading, title, from, source, cited, result, points, lines } = entry;
  return {
    number,
    ...(heading === undefined ? {} : { heading }),
    title,
    text: entry.text(),
    source: source ?? stepSource(from, cited),
    ...(result?.formula ? { formula: result.formula() } : {}),
    ...(result ? { value: result.value, unit: result.unit } : {}),
    from,
    ...(points.length + lines.length > 0 ? { draws: { points, lines } } : {}),
  };
}
