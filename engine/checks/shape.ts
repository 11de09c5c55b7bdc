import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import type { ShapeClaim, ShapeUnit } from '../pattern/shape.ts';
import { firstPieceOf } from '../pattern/shape-parts.ts';
import { rounded } from '../text/figure.ts';
import type { CheckBounds } from './bounds.ts';
import type { ShapeReport } from './report.ts';
import { measuredOn } from './shape/measured.ts';
import { measureShape } from './shape/measures.ts';
import type { Tape } from './tape.ts';

/**
 * Measures every shape that a garment claims, on its pieces as they are written. A figure outside a band that is a
 * bound is an issue; outside any other band it is only reported, beside what usually is the reason.
 */
export function shapeFigures(
  garment: Garment,
  tape: Tape,
  bounds: Pick<CheckBounds, 'seam' | 'kink'>,
): { readonly shapes: readonly ShapeReport[]; readonly issues: readonly Issue[] } {
  const shapes: ShapeReport[] = [];
  const issues: Issue[] = [];
  const on = measuredOn(garment, tape);
  for (const claim of garment.shapes) {
    const measured = measureShape(claim, on);
    if (!measured) {
      issues.push(namesNothing(claim));
      continue;
    }
    const { name, outside, bound = false } = claim;
    const { value, unit } = measured;
    const ok = inBand(value, claim, unit === 'mm' ? bounds.seam : bounds.kink);
    const report = {
      name,
      piece: measured.piece ?? firstPieceOf(claim) ?? '',
      value,
      unit,
      low: claim.low,
      high: claim.high,
      ok,
      bound,
      outside,
    };
    shapes.push(report);
    if (bound && !ok) issues.push(complaint(report));
  }
  return { shapes, issues };
}

/** Whether a figure lies in a band, but for what a walked length or a written digit may be off. */
const inBand = (value: number, { low = -Infinity, high = Infinity }: ShapeLimits, slack: number): boolean =>
  value >= low - slack && value <= high + slack;

interface ShapeLimits {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

const namesNothing = ({ name }: ShapeClaim): Issue => ({
  code: 'shape-not-found',
  severity: 'error',
  path: name,
  message: `"${name}" cannot be measured: a piece, edge, line or notch that it is measured by is not there.`,
});

function complaint({ name, piece, value, unit, low, high, outside }: ShapeReport): Issue {
  return {
    code: 'shape-not-true',
    severity: 'error',
    path: name,
    message: `"${name}" on the ${piece} comes to ${inUnit(value, unit)} and should be ${asked({ low, high }, unit)}: ${outside}.`,
    value,
    limits: {
      ...(low === undefined ? {} : { min: low }),
      ...(high === undefined ? {} : { max: high }),
      unit,
    },
  };
}

const suffix: Readonly<Record<ShapeUnit, string>> = { mm: ' mm', degrees: '°', share: '', ratio: '' };

/** A figure as a message tells it. */
const inUnit = (value: number, unit: ShapeUnit): string => `${rounded(value, 2)}${suffix[unit]}`;

function asked({ low, high }: ShapeLimits, unit: ShapeUnit): string {
  if (low === undefined) return `at most ${inUnit(high ?? Infinity, unit)}`;
  return high === undefined
    ? `at least ${inUnit(low, unit)}`
    : `${inUnit(low, unit)} to ${inUnit(high, unit)}`;
}
