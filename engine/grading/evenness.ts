import type { MeasurementName } from '../body/body.ts';
import { type Cause, causeOf } from './cause.ts';
import type { Axis } from './chart.ts';
import type { GradedSize } from './laid-size.ts';
import type { AxisGrade } from './rule-table.ts';
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
 * may be `EVEN`, and as much more as the steps of the measurements that the chart gives change there, all together.
 */
export function evenness(
  { along, at, names, pieces }: AxisGrade,
  sizes: readonly GradedSize[],
  shapedBy: readonly MeasurementName[],
): Evenness {
  let looked = 0;
  let greatest: number | undefined;
  const uneven: Uneven[] = [];
  for (let i = 1; i + 1 < sizes.length; i++) {
    const three = sizes.slice(i - 1, i + 2);
    const chart = chartChange(three, shapedBy);
    const allowed = EVEN + chart;
    let cause: Cause | undefined;
    const look = (
      where: Pick<Uneven, 'piece' | 'kind' | 'what' | 'quantity'>,
      before: number,
      after: number,
    ): void => {
      const change = Math.abs(after - before);
      looked += 1;
      if (chart === 0) greatest = Math.max(greatest ?? 0, change);
      if (change <= allowed) return;
      cause ??= causeOf(three, shapedBy, change);
      uneven.push({ along, at, name: names[i] ?? '', ...where, before, after, allowed, cause });
    };
    for (const { piece, edges, points } of pieces) {
      for (const { edge, steps } of edges)
        look({ piece, kind: 'edge', what: edge, quantity: 'length' }, steps[i - 1] ?? 0, steps[i] ?? 0);
      for (const { kind, point, steps } of points)
        for (const axis of ['x', 'y'] as const)
          look(
            { piece, kind, what: point, quantity: `d${axis}` },
            steps[i - 1]?.[axis] ?? 0,
            steps[i]?.[axis] ?? 0,
          );
    }
  }
  return { looked, ...(greatest !== undefined && { greatest }), uneven };
}

/** By how much the chart's own steps change in the middle of three sizes, all measurements together, mm. */
const chartChange = (three: readonly GradedSize[], shapedBy: readonly MeasurementName[]): number =>
  shapedBy
    .filter((name) => three.some(({ of }) => of.given.includes(name)))
    .reduce((sum, name) => sum + Math.abs(stepChange(three, name)), 0);
