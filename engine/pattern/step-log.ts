import type { Solution } from '../constraints/solution.ts';
import { DraftMistake } from '../draft-mistake.ts';
import { flatMapped } from '../flat-mapped.ts';
import type { Point } from '../geometry/point.ts';
import { awaitedInk, type StepInk } from './awaited-ink.ts';
import { angleLies, type Dimension, type DimensionPart, lengthLies, partsLie } from './dimension.ts';
import type { PlacedLine, Step } from './garment.ts';
import { exactly, type Given, type Ground, type Mm, type Quantity, type QuantityUnit } from './quantity.ts';
import { rulesToldApart } from './rules-told-apart.ts';
import type { Sentence } from './sentence/sentence.ts';
import type { SentenceParts } from './sentence/tokens.ts';
import { stepSource } from './step-source.ts';
import { saidExactly } from './step-text.ts';

/** A step as it was taken: a sentence with what was put in, or a measured length. Without `unit` it is only said. */
export type TakenStep =
  | {
      readonly title: string;
      readonly sentence: Sentence;
      readonly given: readonly Given[];
      readonly value?: number;
      readonly unit?: QuantityUnit;
    }
  | {
      readonly title: string;
      /** How it was measured on the drawing. */
      readonly how: string;
      readonly from: readonly Ground[];
      readonly value: number;
      readonly unit: QuantityUnit;
    };

interface Entry extends StepInk {
  readonly step: TakenStep;
  readonly heading: string | undefined;
  readonly dimensions: (Dimension | LaidOut)[];
  /** Whether it draws what is known only once a sketch is solved. */
  awaits: boolean;
}

/** Where the parts of a length lie, to be asked when somebody reads the steps. */
interface LaidOut {
  readonly of: Mm;
  readonly times: number;
  readonly parts: () => readonly DimensionPart[];
}

/** The steps of a draft in the order in which they are taken, and what each puts on paper. */
export interface StepLog {
  /** Notes a step; its number, from 1. */
  readonly take: (step: TakenStep) => number;
  /** The steps from here on belong to this part of the drawing. */
  readonly heading: (name: string) => void;
  /** The latest step places a point on a drawing, such as `back`. Returns the point. */
  readonly point: (on: string, name: string, at: Point) => Point;
  /** The latest step draws a line on a drawing. */
  readonly line: (on: string, name: string, curves: PlacedLine['curves']) => void;
  /** The latest step draws lines that are known once the sketch is solved, by their names there. */
  readonly curves: (on: string, names: readonly string[]) => void;
  /** The latest step places points that are known once the sketch is solved: what to call them, by their names there. */
  readonly points: (on: string, called: Readonly<Record<string, string>>) => void;
  /**
   * A length lies on a drawing between these two places, or is that of a line, by its name there. A length that is another
   * than from one place to the other is a mistake of the draft.
   */
  readonly dimension: (
    on: string,
    of: Mm,
    ...where: readonly [from: Point, to: Point] | readonly [line: string]
  ) => void;
  /** An angle lies on a drawing `at` a place, between the ways from there to two others. Another than lies there is a mistake of the draft. */
  readonly angleAt: (on: string, of: Quantity, at: Point, from: Point, to: Point) => void;
  /**
   * A length lies in parts, on one drawing or on several, and is so many `times` as long as they are together. They are asked
   * for, and held to that, when the steps are read.
   */
  readonly laidOut: (of: Mm, times: number, parts: () => readonly DimensionPart[]) => void;
  /** Gives the lines and points asked for so that a solution has. */
  readonly solved: (solution: Pick<Solution, 'curves' | 'points'>) => void;
  /** The step that placed a point, where one did. */
  readonly placedBy: (at: Point) => Ground | undefined;
  /** All steps so far. */
  readonly steps: () => readonly Step[];
}

/** Starts an empty log. */
export function stepLog(): StepLog {
  const entries: Entry[] = [];
  const tellApart = rulesToldApart();
  const placed = new Map<Point, Ground>();
  const awaited = awaitedInk();
  let heading: string | undefined;
  const latest = (): Entry => {
    const entry = entries.at(-1);
    if (!entry) throw new DraftMistake('A step comes first, then what it draws.', []);
    return entry;
  };
  const awaiting = (): Entry => {
    const entry = latest();
    entry.awaits = true;
    return entry;
  };
  // What it draws at once comes after what it has awaited.
  const drawing = (): Entry => {
    const entry = latest();
    if (entry.awaits) awaited.draw();
    return entry;
  };
  return {
    take: (step) => {
      tellApart('given' in step ? step.given : step.from);
      return entries.push({ step, heading, points: [], lines: [], dimensions: [], awaits: false });
    },
    heading: (name) => {
      heading = name;
    },
    point: (on, name, at) => {
      const { step, points } = drawing();
      points.push({ on, name, at });
      placed.set(at, asGround(step, entries.length));
      return at;
    },
    line: (on, name, curves) => {
      drawing().lines.push({ on, name, curves });
    },
    curves: (on, names) => {
      const entry = awaiting();
      for (const name of names) awaited.add({ kind: 'curve', entry, on, name });
    },
    points: (on, called) => {
      const entry = awaiting();
      for (const [name, words] of Object.entries(called))
        awaited.add({ kind: 'point', entry, on, name, words });
    },
    dimension: (on, of, ...where) => {
      latest().dimensions.push(lengthLies(on, of, where));
    },
    angleAt: (on, of, at, from, to) => {
      latest().dimensions.push(angleLies(on, of, at, [from, to]));
    },
    laidOut: (of, times, parts) => {
      latest().dimensions.push({ of, times, parts });
    },
    solved: awaited.solved,
    placedBy: (at) => placed.get(at),
    steps: () => {
      awaited.draw();
      const lines = entries.flatMap((entry) => entry.lines);
      return entries.map((entry, i) => written(entry, i + 1, lines));
    },
  };
}

/** A step as what a later one was found from. */
function asGround({ title, value, unit }: TakenStep, number: number): Ground {
  const origin = { kind: 'step', number } as const;
  return value === undefined || unit === undefined
    ? { name: title, origin }
    : { name: title, origin, value, unit };
}

type WrittenStep = { -readonly [K in keyof Step]: Step[K] };

/** Writes a step out, so that it no longer needs the draft. */
function written(
  { step, heading, points, lines, dimensions }: Entry,
  number: number,
  all: readonly PlacedLine[],
): Step {
  const made = 'how' in step ? asMeasured(step, number) : asSentence(step, number);
  if (step.value !== undefined && step.unit !== undefined) {
    made.value = step.value;
    made.unit = step.unit;
  }
  if (heading !== undefined) made.heading = heading;
  if (points.length + lines.length > 0) made.draws = { points, lines };
  if (dimensions.length > 0)
    made.dimensions = flatMapped(dimensions, (each) =>
      'kind' in each ? [each] : (partsLie(each.of, each.times, each.parts(), all) ?? []),
    );
  return made;
}

function asMeasured(step: Extract<TakenStep, { how: string }>, number: number): WrittenStep {
  const { title, how, from, value, unit } = step;
  const source = stepSource(from, undefined);
  return { number, title, says: [how], source, from, formula: exactly(value, unit) };
}

function asSentence(step: Extract<TakenStep, { sentence: Sentence }>, number: number): WrittenStep {
  const { title, sentence, given, unit } = step;
  const from = quantitiesIn(given);
  const says = from.length === given.length ? sentence.says : placed(sentence.says, given, from);
  const source = stepSource(from, sentence.cut.cited);
  return unit === undefined
    ? { number, title, says, source, from }
    : { number, title, says, source, from, formula: saidExactly(sentence.exact, given) };
}

/** A sentence with its words put in, its numbers by their places among the grounds of the step. */
const placed = (says: SentenceParts, given: readonly Given[], from: readonly Ground[]): SentenceParts =>
  says.map((part) => {
    const put = typeof part === 'number' ? given[part] : part;
    return typeof put === 'object' ? from.indexOf(put) : (put ?? '');
  });

/** The quantities put into a sentence, each once. */
function quantitiesIn(given: readonly Given[]): readonly Ground[] {
  const found: Ground[] = [];
  for (const each of given) if (typeof each !== 'string' && !found.includes(each)) found.push(each);
  return found;
}
