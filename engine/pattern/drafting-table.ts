import { type Body, type MeasurementName, measurementNames } from '../body/body.ts';
import {
  type FittedLevel,
  type FittedSeam,
  type FoundOn,
  fitted,
  type PlainChange,
  takenIn,
} from '../body/fitting.ts';
import { measurementWords } from '../body/measurement-words.ts';
import { SketchBuilder } from '../constraints/sketch-builder.ts';
import { DraftMistake } from '../draft-mistake.ts';
import { flatMapped } from '../flat-mapped.ts';
import type { Point } from '../geometry/point.ts';
import { type IssueBook, issueBook } from './issue-book.ts';
import {
  type Angle,
  type Given,
  type Ground,
  type Mm,
  type Quantity,
  type QuantityUnit,
  quantity,
  type Ratio,
  type UnitOf,
} from './quantity.ts';
import type { Rule } from './rule.ts';
import { sentenceOf } from './sentence/sentence.ts';
import { type StepLog, stepLog } from './step-log.ts';
import { said } from './step-text.ts';
import type { Choice, StylingOf } from './styling.ts';

/** What may be put into a sentence: a quantity or a rule, which compute, or words for a name or the title. */
type PutIn = Quantity | Rule | string;

/** Writes a sentence that computes (its grammar: `sentence/sentence.ts`), notes it as a step, and gives its result. */
type Computes<Result> = (strings: TemplateStringsArray, ...values: readonly PutIn[]) => Result;

type NumberChoice = Exclude<Choice, { readonly kind: 'word' }>;

/** The measurements as quantities: all lengths but the shoulder slope, which is an angle. */
export type BodyQuantities = {
  readonly [M in MeasurementName]: M extends 'shoulderSlope' ? Angle : Mm;
};

/** The choices that are numbers as quantities, each in its unit; `auto` where the draft is to work one out. */
export type ChosenQuantities<Choices extends readonly Choice[]> = {
  readonly [C in Extract<Choices[number], NumberChoice> as C['name']]:
    | Quantity<UnitOf<C['unit']>>
    | (C['kind'] extends 'number or auto' ? 'auto' : never);
};

/**
 * All that a draft is drawn from and onto: the body, the choices made, the sketch, and sentences that compute. Each
 * sentence is a step of the construction; its result knows the step, so that a later one can be traced to the tape.
 */
export interface DraftingTable<Choices extends readonly Choice[]>
  extends Omit<StepLog, 'take' | 'placedBy'>,
    IssueBook {
  /** As the fitting found it. */
  readonly body: Body;
  readonly size: BodyQuantities;
  /** The choices that are left open, and how they were made: numbers as written, and words. */
  readonly choices: readonly Choice[];
  readonly styling: StylingOf<Choices>;
  readonly choice: ChosenQuantities<Choices>;
  readonly sketch: SketchBuilder;
  /** A step that comes to a length. */
  readonly mm: Computes<Mm>;
  /** A step that comes to an angle: radians, written in degrees. */
  readonly angle: Computes<Angle>;
  /** A step that comes to a share, a ratio, or another plain number. */
  readonly ratio: Computes<Ratio>;
  /** A step without a number of its own: only the words are said, with the figures put in. */
  readonly say: Computes<void>;
  /** A step that measures a length on the drawing (mm) between points placed before, or of what `from` names. */
  readonly measured: (
    title: string,
    how: string,
    value: number,
    ...from: readonly (Quantity | Point)[]
  ) => Mm;
  /** All there is of a change found at the fitting, or of what was found so; nothing where there was none. */
  readonly fitted: (kind: PlainChange, on?: FoundOn) => Mm;
  /** How far the fitting took a seam in at a level on each layer; less than nothing where it let it out. */
  readonly takenIn: (seam: FittedSeam, level: FittedLevel) => Mm;
  /** An empty table of the same draft, for another body, choices made otherwise, or onto another sketch. */
  readonly afresh: (other: Afresh) => DraftingTable<Choices>;
}

/** What may be otherwise on an empty table; all else is as on the one before. */
interface Afresh {
  readonly body?: Body;
  /** Choices made otherwise. */
  readonly styling?: Readonly<Record<string, number | string>>;
  readonly sketch?: SketchBuilder;
}

/** Lays out an empty table for a body and the choices made, whose `declared` gives their units. */
export function draftingTable<const Choices extends readonly Choice[]>(
  body: Body,
  declared: Choices,
  styling: StylingOf<Choices>,
  sketch: SketchBuilder = new SketchBuilder(),
): DraftingTable<Choices> {
  const { take, placedBy, heading, point, line, curves, points, dimension, angleAt, laidOut, solved, steps } =
    stepLog();
  const { refuse, refusals, remark, remarks } = issueBook();
  const computes =
    <U extends QuantityUnit>(unit: U): Computes<Quantity<U>> =>
    (strings, ...values) => {
      const given = givenIn(strings, values);
      const sentence = sentenceOf(strings, given, unit);
      const value = sentence.compute(given);
      const title = said(sentence.cut.title, given);
      const number = take({ title, sentence, given, value, unit });
      return { value, unit, name: title, origin: { kind: 'step', number } };
    };
  const say: Computes<void> = (strings, ...values) => {
    const given = givenIn(strings, values);
    const sentence = sentenceOf(strings, given, undefined);
    take({ title: said(sentence.cut.title, given), sentence, given });
  };
  return {
    heading,
    point,
    line,
    curves,
    points,
    dimension,
    angleAt,
    laidOut,
    solved,
    steps,
    refuse,
    refusals,
    remark,
    remarks,
    body,
    size: sizesOf(body),
    choices: declared,
    styling,
    choice: chosen(declared, styling),
    sketch,
    mm: computes('mm'),
    angle: computes('rad'),
    ratio: computes('ratio'),
    say,
    measured: (title, how, value, ...from) => {
      const number = take({ title, how, from: grounds(from, placedBy), value, unit: 'mm' });
      return { value, unit: 'mm', name: title, origin: { kind: 'step', number } };
    },
    fitted: (kind, on) => quantity(fitted(body.fitting, kind, on), 'mm', kind, { kind: 'fitting' }),
    takenIn: (seam, level) =>
      quantity(takenIn(body.fitting, seam, level), 'mm', `${seam} at the ${level}`, { kind: 'fitting' }),
    afresh: (other) =>
      draftingTable(other.body ?? body, declared, { ...styling, ...other.styling }, other.sketch),
  };
}

/** The measurements of a body as quantities. */
function sizesOf({ size }: Body): BodyQuantities {
  const quantities: Partial<Record<MeasurementName, Quantity>> = {};
  for (const measurement of measurementNames) {
    const unit = measurement === 'shoulderSlope' ? 'rad' : 'mm';
    const name = measurementWords(measurement);
    quantities[measurement] = {
      value: size[measurement],
      unit,
      name,
      origin: { kind: 'measurement', measurement },
    };
  }
  return quantities as BodyQuantities;
}

/** The numbers among the choices as quantities. */
function chosen<Choices extends readonly Choice[]>(
  declared: Choices,
  styling: Readonly<Record<string, number | string>>,
): ChosenQuantities<Choices> {
  const numbers: Record<string, Quantity | string> = {};
  for (const choice of declared) {
    const made = styling[choice.name];
    if (choice.kind === 'word' || made === undefined) continue;
    const { name, unit } = choice;
    numbers[name] = typeof made === 'number' ? quantity(made, unit, name, { kind: 'choice' }) : made;
  }
  return numbers as ChosenQuantities<Choices>;
}

function givenIn(strings: readonly string[], values: readonly PutIn[]): readonly Given[] {
  return values.map((put, i) => {
    if (typeof put === 'string') return put;
    if (typeof put === 'object' && put !== null) return 'quantity' in put ? put.quantity : put;
    throw notPutIn(strings.slice(0, i + 1).join('◦'), put);
  });
}

/** A name that nothing bears comes out as `undefined`, and a number typed out has no origin. */
function notPutIn(before: string, put: unknown): DraftMistake {
  const what =
    put === undefined
      ? 'nothing: no measurement, choice, rule or step has the name that is put in'
      : `${String(put)}, which has no origin: put in a measurement, a choice, a rule or a step`;
  return new DraftMistake(`A sentence is given ${what}: "${before.trim()} >>>"`, []);
}

/** What a measured length was found from: quantities, and the steps that placed the points. */
function grounds(from: readonly (Quantity | Point)[], placedBy: StepLog['placedBy']): readonly Ground[] {
  const found = flatMapped(from, (each) => ('unit' in each ? [each] : (placedBy(each) ?? [])));
  return [...new Map(found.map((ground) => [ground.name, ground])).values()];
}
