import type { MeasurementName } from '../body/body.ts';
import type { Sensitivity } from '../sensitivity/sensitivity.ts';
import type { Jump } from './jump.ts';
import type { GradedSize } from './laid-size.ts';
import type { PieceGrade } from './rule-table.ts';
import { stepChange } from './step-change.ts';
import { type EvenTurn, evenTurn, isComputed, speaksOf, type UnevenStep, unevenStep } from './uneven-step.ts';

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
  | UnevenStep
  | EvenTurn
  /** Lines that are found together rest on a limit in some of the sizes there, and not in all. */
  | { readonly kind: 'limit'; readonly limits: readonly string[] }
  /** Lines that are found together turn from one answer to another between two sizes. */
  | ({ readonly kind: 'branch' } & Jump)
  /** None of these: the lines that the solver finds together. */
  | { readonly kind: 'found' };

/** What a line does not follow by so much is no cause of its change: a share of it. */
const LEAST_SHARE = 0.2;

/** What bends by this share of a change is enough to be its cause, unasked whether there is a limit. */
const MOST_OF_IT = 0.5;

/** An arc explains a change only if it is this share of it: pieces turn everywhere, by a little. */
const NEARLY_ALL = 0.75;

/** A step of a measurement that changes by less, mm, bends nothing that is looked at. */
const LEAST_BEND = 0.1;

/** Whatever moves a piece by this share of what moves it most is named with that. */
const WITH_IT = 0.5;

/** What a draft depends on, and what of it a size rests on. */
export interface Shaping {
  readonly shapedBy: readonly MeasurementName[];
  /** The limits on which the lines of a size rest. */
  readonly limitsMet: (size: GradedSize) => readonly string[];
  /** How far the edges of a piece jump between two sizes, if by `least` mm. */
  readonly jump: (from: GradedSize, to: GradedSize, piece: string, least: number) => Jump | undefined;
  /** How its edges answer to each measurement changed alone. */
  readonly slopes: (size: GradedSize) => readonly Sensitivity[];
}

/**
 * The cause of a change (mm) in the step of a piece from size to size, in the middle of three: another styling; the measurement,
 * the chart's own or an estimate, whose changed step moves an edge of the piece most; the first step of the construction that
 * speaks of the piece and bends at least half as much; an angle by whose even growth a far corner moves on an arc; a jump of
 * its lines between two sizes, which limits come and go with; a limit that its lines reach; a step that bends less, none much
 * smaller than what it is to explain, or one of another piece; or else a length that was measured on the drawing, or a lesser jump.
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
  const own = speaksOf(piece.piece, three);
  const most = MOST_OF_IT * change;
  const bends = unevenStep(three, most, (step) => isComputed(step) && own(step));
  if (bends) return bends;
  const turn = evenTurn(three, piece.piece, NEARLY_ALL * change, own);
  if (turn) return turn;
  const jump = branchBetween(three, piece, most, shaping);
  if (jump) return jump;
  const limits = limitsOf(piece, three, shaping);
  if (limits.length > 0) return { kind: 'limit', limits };
  return (
    unevenStep(three, least, (step) => isComputed(step) && own(step)) ??
    unevenStep(three, least, isComputed) ??
    unevenStep(three, least, (step) => !isComputed(step)) ??
    branchBetween(three, piece, least, shaping) ?? { kind: 'found' }
  );
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

/** The greater jump on either side of the middle size; none of less than `least`. */
function branchBetween(
  [before, middle, after]: readonly GradedSize[],
  { piece }: PieceGrade,
  least: number,
  { jump }: Shaping,
): Cause | undefined {
  if (!before || !middle || !after) return undefined;
  const one = jump(before, middle, piece, least);
  const other = jump(middle, after, piece, least);
  const greater = one && other ? (other.mm > one.mm ? other : one) : (one ?? other);
  return greater && { kind: 'branch', ...greater };
}

/** How much the edge of a piece that answers most to a measurement grows, mm for each mm. */
const steepest = (answers: readonly Sensitivity[], name: MeasurementName, piece: string): number =>
  Math.max(
    0,
    ...(answers.find(({ measurement }) => measurement === name)?.slopes ?? [])
      .filter(({ kind, on }) => kind === 'edge' && on === piece)
      .map(({ perMm }) => Math.abs(perMm)),
  );

/**
 * The limits that are met in some sizes only, and that speak of this piece or of one of its edges: by a word that is not common
 * to many pieces, and not by the name of another piece.
 */
function limitsOf(
  { piece, edges }: PieceGrade,
  three: readonly GradedSize[],
  { limitsMet }: Shaping,
): readonly string[] {
  const met = three.map(limitsMet);
  const some = new Set(met.flat().filter((limit) => !met.every((size) => size.includes(limit))));
  const words = new Set([piece, ...edges.map(({ edge }) => edge)].flatMap((name) => name.split(' ')));
  const others = [...(three[0]?.pieces.keys() ?? [])].filter((name) => !piece.includes(name));
  return [...some].filter(
    (limit) =>
      !others.some((name) => limit.includes(name)) &&
      limit.split(' ').some((word) => words.has(word) && !COMMON.has(word)),
  );
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
