import type { MeasurementName } from '../body/body.ts';
import { measurementWords } from '../body/measurement-words.ts';
import { boundsName } from '../constraints/compile/residuals.ts';
import type { Step } from '../pattern/garment.ts';
import type { Sensitivity } from '../sensitivity/sensitivity.ts';
import { fixedMm } from '../text/figure.ts';
import { listed } from '../text/listed.ts';
import type { GradedSize } from './laid-size.ts';
import type { PieceGrade } from './rule-table.ts';
import { stepChange } from './step-change.ts';

/** Why a step changes at a size. */
export type Cause =
  /** The chart's own step of a measurement. */
  | { readonly kind: 'chart'; readonly measurement: MeasurementName; readonly change: number }
  /** Another styling there. */
  | { readonly kind: 'styling'; readonly choice: string }
  /** A measurement that the chart does not give, as it was estimated; `others` move the piece at least half as far. */
  | {
      readonly kind: 'estimate';
      readonly measurement: MeasurementName;
      readonly change: number;
      readonly others: readonly MeasurementName[];
    }
  /** A step of the construction, the first whose own step changes: a rule's limit, as a rule. */
  | { readonly kind: 'construction'; readonly step: string; readonly change: number }
  /** Lines that are found together rest on a limit in some of the sizes there, and not in all. */
  | { readonly kind: 'limit'; readonly limits: readonly string[] }
  /** None of these: the lines that the solver finds together. */
  | { readonly kind: 'found' };

/** What a line does not follow by so much is no cause of its change: a share of it. */
const LEAST_SHARE = 0.2;

/** A step of a measurement that changes by less, mm, bends nothing that is looked at. */
const LEAST_BEND = 0.1;

/** Whatever moves a piece by this share of what moves it most is named with that. */
const WITH_IT = 0.5;

/** What a draft depends on, and what of it a size rests on. */
export interface Shaping {
  readonly shapedBy: readonly MeasurementName[];
  /** The limits on which the lines of a size rest. */
  readonly limitsMet: (size: GradedSize) => readonly string[];
  /** How its edges answer to each measurement changed alone. */
  readonly slopes: (size: GradedSize) => readonly Sensitivity[];
}

/**
 * The cause of a change (mm) in the step of a piece from size to size, in the middle of three: another styling; the measurement,
 * the chart's own or an estimate, whose changed step moves an edge of the piece most; the first step of the construction whose step
 * changes; none much smaller than what it is to explain; or a limit that its lines reach; or else a length that was measured on the
 * drawing.
 */
export function causeOf(
  three: readonly GradedSize[],
  piece: PieceGrade,
  change: number,
  shaping: Shaping,
): Cause {
  const choice = otherStyling(three);
  if (choice !== undefined) return { kind: 'styling', choice };
  const least = LEAST_SHARE * change;
  const measured = measurementOf(three, piece, least, shaping);
  if (measured) return measured;
  const computed = unevenStep(three, least, isComputed);
  if (computed) return computed;
  const limits = limitsOf(piece, three.map(shaping.limitsMet));
  if (limits.length > 0) return { kind: 'limit', limits };
  return unevenStep(three, least, (step) => !isComputed(step)) ?? { kind: 'found' };
}

/** The measurement whose changed step moves an edge of the piece most, by as much as the middle size answers to it; none by less than `least`. */
function measurementOf(
  three: readonly GradedSize[],
  { piece }: PieceGrade,
  least: number,
  { shapedBy, slopes }: Shaping,
): Cause | undefined {
  const bends = shapedBy
    .map((measurement) => ({ measurement, change: stepChange(three, measurement) }))
    .filter(({ change }) => Math.abs(change) >= LEAST_BEND);
  const [, middle] = three;
  if (bends.length === 0 || !middle) return undefined;
  const answers = slopes(middle);
  const [first, ...others] = bends
    .map((bend) => ({ ...bend, moves: Math.abs(bend.change) * steepest(answers, bend.measurement, piece) }))
    .filter(({ moves }) => moves >= least)
    .toSorted((a, b) => b.moves - a.moves);
  if (!first) return undefined;
  const { measurement, change, moves } = first;
  const isGiven = (name: MeasurementName): boolean => three.some(({ of }) => of.given.includes(name));
  if (isGiven(measurement)) return { kind: 'chart', measurement, change };
  const withIt = others.filter((other) => other.moves >= WITH_IT * moves && !isGiven(other.measurement));
  return { kind: 'estimate', measurement, change, others: withIt.map((other) => other.measurement) };
}

/** How much the edge of a piece that answers most to a measurement grows, mm for each mm. */
const steepest = (answers: readonly Sensitivity[], name: MeasurementName, piece: string): number =>
  Math.max(
    0,
    ...(answers.find(({ measurement }) => measurement === name)?.slopes ?? [])
      .filter(({ kind, on }) => kind === 'edge' && on === piece)
      .map(({ perMm }) => Math.abs(perMm)),
  );

/** Whether a step computes; a length measured on the drawing is a bare number. */
const isComputed = ({ formula }: Step): boolean => formula?.includes(' ') ?? false;

/** The limits that are met in some sizes only, and that speak of this piece or of one of its edges. */
function limitsOf({ piece, edges }: PieceGrade, met: readonly (readonly string[])[]): readonly string[] {
  const some = new Set(met.flat().filter((limit) => !met.every((size) => size.includes(limit))));
  const words = new Set([piece, ...edges.map(({ edge }) => edge)].flatMap((name) => name.split(' ')));
  return [...some].filter((limit) => limit.split(' ').some((word) => words.has(word) && !COMMON.has(word)));
}

/** Words that pieces have in common. */
const COMMON: ReadonlySet<string> = new Set([
  'front',
  'back',
  'side',
  'centre',
  'left',
  'right',
  'of',
  'at',
  'the',
  'to',
]);

function otherStyling(three: readonly GradedSize[]): string | undefined {
  const [first, ...others] = three.map(({ made }) => made.styling);
  return Object.keys(first ?? {}).find((name) => others.some((styling) => styling[name] !== first?.[name]));
}

/** The first step of the construction with a length whose own step from size to size changes by so much, mm. */
function unevenStep(
  three: readonly GradedSize[],
  least: number,
  counts: (step: Step) => boolean,
): Cause | undefined {
  const [before, middle, after] = three.map(({ made }) => lengthsOf(made.garment.steps.filter(counts)));
  for (const [step, value] of middle ?? []) {
    const [a, c] = [before?.get(step), after?.get(step)];
    if (a === undefined || c === undefined) continue;
    const change = c - 2 * value + a;
    if (Math.abs(change) >= least) return { kind: 'construction', step, change };
  }
  return undefined;
}

const lengthsOf = (steps: readonly Step[]): ReadonlyMap<string, number> =>
  new Map(
    steps.flatMap(({ title, unit, value }) =>
      unit === 'mm' && value !== undefined ? [[title, value] as const] : [],
    ),
  );

/** What causes of one kind have in common, whatever they come to. */
export function causeName(cause: Cause): string {
  switch (cause.kind) {
    case 'chart':
    case 'estimate':
      return `${cause.kind} ${cause.measurement}`;
    case 'styling':
      return `${cause.kind} ${cause.choice}`;
    case 'construction':
      return `${cause.kind} ${cause.step}`;
    case 'limit':
      return `${cause.kind} ${cause.limits.join()}`;
    case 'found':
      return cause.kind;
  }
}

/** The cause in a dressmaker's words. */
export function causeWords(cause: Cause): string {
  switch (cause.kind) {
    case 'chart':
      return `the chart’s own step in ${measurementWords(cause.measurement)} changes by ${mm(cause.change)}`;
    case 'styling':
      return `“${cause.choice}” is chosen otherwise there`;
    case 'estimate':
      return `the chart does not give the ${measurementWords(cause.measurement)}, and the step of its estimate changes by ${mm(cause.change)}${cause.others.length > 0 ? `, as that of the ${listed(cause.others.map(measurementWords))} does` : ''}`;
    case 'construction':
      return `the step of “${cause.step}” in the construction changes by ${mm(cause.change)}`;
    case 'limit':
      return `${cause.limits.map((limit) => `“${withoutBounds(limit)}”`).join(' and ')} ${cause.limits.length === 1 ? 'comes' : 'come'} to ${cause.limits.length === 1 ? 'its limit' : 'their limits'} there`;
    case 'found':
      return 'no single number; the lines that are found together turn there';
  }
}

/** A bound is called after what it bounds. */
const withoutBounds = (limit: string): string =>
  limit.startsWith(boundsName('')) ? limit.slice(boundsName('').length) : limit;

const mm = (value: number): string => fixedMm(Math.abs(value), 1);
