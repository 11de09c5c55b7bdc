import {
  type Choice,
  type Evaluation,
  edgeLength,
  pathData,
  placesOf,
  type Step,
  type StepWord,
  stepWords,
  withLengthsIn,
} from '../../../../drafts/index.ts';
import { amountText, type Known, whence } from '../../../draft/why.ts';
import { dimensionsOf, numberOf, type TaughtDimension } from './dimension.ts';

/** The construction of a garment for one body, step by step. Plain data; lengths in texts are in the reader's unit. */
export interface Lesson {
  readonly garment: string;
  readonly body: string;
  readonly steps: readonly TaughtStep[];
  /** Which of its lengths lie where on its drawings. */
  readonly dimensions: readonly TaughtDimension[];
}

export interface TaughtStep {
  readonly number: number;
  readonly heading: string;
  readonly title: string;
  /** The sentence with the numbers of this body; the place of a number in it is its place in `grounds`. */
  readonly words: readonly StepWord[];
  readonly source: string;
  /** Where the points lie that the step places, a line for each drawing. */
  readonly places: readonly string[];
  readonly grounds: readonly TaughtGround[];
  /** What it comes to, in mm, where that is a length. */
  readonly mm?: number;
  /** What it comes to as it is read, where it comes to anything. */
  readonly amount?: string;
  readonly draws: readonly TaughtDrawing[];
}

/** What a step was found from: its number, and where that came from. */
export interface TaughtGround {
  readonly from: 'measurement' | 'choice' | 'rule' | 'fitting' | 'step';
  readonly name: string;
  /** What the number is known by, wherever it is used. */
  readonly number: string;
  readonly amount: string;
  readonly mm?: number;
  /** Where it came from, in a sentence. */
  readonly says: string;
  readonly step?: number;
  readonly rule?: TaughtRule;
}

export interface TaughtRule {
  readonly id: string;
  /** As it is written: an angle in degrees. */
  readonly value: number;
  readonly unit: 'mm' | 'degrees' | 'ratio' | 'per mm';
}

/** What a step puts on one of the drawings, in mm of the body. */
export interface TaughtDrawing {
  readonly on: string;
  readonly lines: readonly TaughtLine[];
  readonly points: readonly TaughtPoint[];
}

export interface TaughtLine {
  readonly name: string;
  readonly d: string;
  readonly length: number;
  /** What the line reaches to: x and y of its ends and handles. */
  readonly reach: readonly (readonly [x: number, y: number])[];
}

export interface TaughtPoint {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

/** The construction of an evaluated garment; `units` are those of the reader. */
export function lessonOf(
  { garment, body, styling }: Evaluation,
  choices: readonly Choice[],
  units: 'mm' | 'in',
): Lesson {
  const known: Known = { body, choices, styling, units };
  return {
    garment: garment.name,
    body: garment.body,
    steps: garment.steps.map((step) => taught(step, known)),
    dimensions: dimensionsOf(garment.steps),
  };
}

function taught(step: Step, known: Known): TaughtStep {
  const { units } = known;
  const { number, heading, title, source, value, unit, from } = step;
  return {
    number,
    heading: heading ?? 'To begin with',
    title: withLengthsIn(title, units),
    words: stepWords(step, units),
    source: withLengthsIn(source, units),
    places: placesOf(step, units),
    grounds: from.map((ground) => taughtGround(ground, known)),
    ...(unit === 'mm' && value !== undefined ? { mm: value } : {}),
    ...(unit !== undefined && value !== undefined
      ? { amount: amountText({ name: title, origin: { kind: 'step', number }, value, unit }, units) }
      : {}),
    draws: drawingsOf(step),
  };
}

function taughtGround(ground: Step['from'][number], known: Known): TaughtGround {
  const { name, origin, value, unit } = ground;
  return {
    from: origin.kind,
    name: withLengthsIn(name, known.units),
    number: numberOf(ground),
    amount: amountText(ground, known.units),
    says: whence(ground, known),
    ...(unit === 'mm' && value !== undefined ? { mm: value } : {}),
    ...(origin.kind === 'step' ? { step: origin.number } : {}),
    ...(origin.kind === 'rule' && value !== undefined && unit !== undefined
      ? {
          rule:
            unit === 'rad'
              ? { id: origin.id, value: (value * 180) / Math.PI, unit: 'degrees' }
              : { id: origin.id, value, unit },
        }
      : {}),
  };
}

function drawingsOf({ draws }: Step): readonly TaughtDrawing[] {
  const { points = [], lines = [] } = draws ?? {};
  return [...new Set([...points, ...lines].map(({ on }) => on))].map((on) => ({
    on,
    lines: lines
      .filter((line) => line.on === on)
      .map(({ name, curves }) => ({
        name,
        d: pathData(curves),
        length: edgeLength({ name, curves }),
        reach: curves.flatMap((curve) =>
          (curve.kind === 'line'
            ? [curve.from, curve.to]
            : [curve.from, curve.handle1, curve.handle2, curve.to]
          ).map(({ x, y }) => [x, y] as const),
        ),
      })),
    points: points.filter((each) => each.on === on).map(({ name, at: { x, y } }) => ({ name, x, y })),
  }));
}
