import type { MeasurementName } from '../body/body.ts';
import { type Cause, causeOf, type Shaping } from './cause.ts';
import type { Axis } from './chart.ts';
import type { GradedSize } from './laid-size.ts';
import type { AxisGrade, PieceGrade } from './rule-table.ts';
import { stepChange } from './step-change.ts';

/**
 * A step may change by this from one size to the next where the chart's does not, mm: a pencil line, and what turning a
 * seam by a degree shifts its far end by. Judgement. Larger: a level that stops growing in the middle of a run passes.
 * Smaller: the bend of an armhole through nine sizes is told as if it were a fault.
 */
export const EVEN = 1;

/** A length or a place whose step changes where the chart's does not, or by more than the chart's does. */
export interface Uneven {
  readonly along: Axis['along'];
  readonly at: string;
  /** The size or cup at which the step changes. */
  readonly name: string;
  readonly piece: string;
  readonly kind: 'edge' | 'corner' | 'notch';
  /** The edge, corner or notch. */
  readonly what: string;
  readonly quantity: 'length' | 'dx' | 'dy';
  /** The steps before and after, mm. */
  readonly before: number;
  readonly after: number;
  /** By how much the step may change here, mm. */
  readonly allowed: number;
  readonly cause: Cause;
}

/** How many steps were looked at along an axis, and which of them are uneven. */
export interface Evenness {
  readonly looked: number;
  /** The greatest change of a step where the chart's own does not change, mm; none where it changes everywhere. */
  readonly greatest?: number;
  readonly uneven: readonly Uneven[];
}

/**
 * Looks at every second difference of an axis: the step of a length or place into a size against the step out of it. It
 * may be `EVEN`, on a piece that is gathered so many times as it is fuller than what it is sewn to, and as much more as the
 * steps of the measurements that the chart gives change there, all together.
 */
export function evenness(
  { along, at, names, pieces }: AxisGrade,
  sizes: readonly GradedSize[],
  shaping: Shaping,
): Evenness {
  let looked = 0;
  let greatest: number | undefined;
  const uneven: Uneven[] = [];
  for (let i = 1; i + 1 < sizes.length; i++) {
    const three = sizes.slice(i - 1, i + 2);
    const chart = chartChange(three, shaping.shapedBy);
    for (const grade of pieces) {
      const allowed = EVEN * fullnessOf(grade.piece, three) + chart;
      const { count, most } = changesAt(grade, i);
      looked += count;
      if (chart === 0) greatest = Math.max(greatest ?? 0, most);
      if (most <= allowed) continue;
      // What bends a piece most is the cause of whatever bends in it.
      const cause = causeOf(three, grade, most, shaping);
      const name = names[i] ?? '';
      for (const step of stepsAt(grade, i))
        if (changeOf(step) > allowed) uneven.push({ along, at, name, ...step, allowed, cause });
    }
  }
  return { looked, ...(greatest !== undefined && { greatest }), uneven };
}

/** A step into the middle of three sizes, and the one out of it. */
type TwoSteps = Pick<Uneven, 'piece' | 'kind' | 'what' | 'quantity' | 'before' | 'after'>;

/** By how much a step changes, mm. */
export const changeOf = ({ before, after }: Pick<Uneven, 'before' | 'after'>): number =>
  Math.abs(after - before);

/** How many steps of a piece there are into the size in this place of an axis, and the most that one of them changes there, mm. */
function changesAt(
  { edges, points }: PieceGrade,
  i: number,
): { readonly count: number; readonly most: number } {
  let most = 0;
  for (const { steps } of edges) most = Math.max(most, Math.abs((steps[i] ?? 0) - (steps[i - 1] ?? 0)));
  for (const { steps } of points) {
    const [before, after] = [steps[i - 1], steps[i]];
    const across = Math.abs((after?.x ?? 0) - (before?.x ?? 0));
    const down = Math.abs((after?.y ?? 0) - (before?.y ?? 0));
    most = Math.max(most, across, down);
  }
  return { count: edges.length + 2 * points.length, most };
}

/** All steps of a piece into the size in this place of an axis, each with the one out of it. */
const stepsAt = ({ piece, edges, points }: PieceGrade, i: number): readonly TwoSteps[] => [
  ...edges.map(({ edge, steps }): TwoSteps => {
    const [before = 0, after = 0] = steps.slice(i - 1, i + 1);
    return { piece, kind: 'edge', what: edge, quantity: 'length', before, after };
  }),
  ...points.flatMap(({ kind, point, steps }) => {
    const [before, after] = [steps[i - 1], steps[i]];
    return (['x', 'y'] as const).map(
      (axis): TwoSteps => ({
        ...{ piece, kind, what: point, quantity: `d${axis}` },
        ...{ before: before?.[axis] ?? 0, after: after?.[axis] ?? 0 },
      }),
    );
  }),
];

/** Where a piece is gathered the most, so much of it goes into each mm of what it is sewn to; 1 where it is not. */
function fullnessOf(piece: string, three: readonly GradedSize[]): number {
  let most = 1;
  for (const { made } of three)
    for (const { a, gatherRatio } of made.garment.seams)
      if (gatherRatio > most && a.some((edge) => edge.piece === piece)) most = gatherRatio;
  return most;
}

/** By how much the chart's own steps change in the middle of three sizes, all measurements together, mm. */
const chartChange = (three: readonly GradedSize[], shapedBy: readonly MeasurementName[]): number =>
  shapedBy
    .filter((name) => three.some(({ of }) => of.given.includes(name)))
    .reduce((sum, name) => sum + Math.abs(stepChange(three, name)), 0);
