import { flatMapped } from '../flat-mapped.ts';
import type { Issue } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, type Unit } from '../text/units.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { childShare, isWithin, limitsOf, type MeasurementLimits, type Span } from './limits.ts';
import { measurementWords } from './measurement-words.ts';

/**
 * Refuses numbers that no body has, warns of those that hardly any woman has, and notes those beyond the usual. A
 * child's possible sizes are smaller. Numbers and limits are in the file's unit, the slope in degrees.
 */
export function outOfRange(
  numbers: Readonly<Partial<Record<MeasurementName, number>>>,
  units: Unit,
  child: boolean,
): readonly Issue[] {
  return flatMapped(measurementNames, (name) => {
    const value = numbers[name];
    const scale = unitScale(name, units);
    const found = value === undefined ? undefined : verdict(value * scale, limitsOf[name], child);
    if (value === undefined || !found) return [];
    const unit = name === 'shoulderSlope' ? 'degrees' : units;
    const [min, max] = [found.span[0] / scale, found.span[1] / scale];
    return [
      {
        code: found.code,
        severity: found.severity,
        path: name,
        value,
        limits: { min, max, unit },
        message: `The ${measurementWords(name)} of ${inUnit(value, unit)} ${found.says} ${inUnit(min, unit)} and ${inUnit(max, unit)}.`,
      },
    ];
  });
}

interface RangeVerdict extends Pick<Issue, 'code' | 'severity'> {
  readonly span: Span;
  readonly says: string;
}

/** The gravest thing to be said of a value, mm or radians. */
function verdict(
  value: number,
  { usual, likely, possible }: MeasurementLimits,
  child: boolean,
): RangeVerdict | undefined {
  const allowed: Span = [possible[0] * (child ? childShare : 1), possible[1]];
  if (!isWithin(value, allowed))
    return {
      code: 'measurement-out-of-range',
      severity: 'error',
      span: allowed,
      says: 'cannot be right. It lies between',
    };
  if (!isWithin(value, likely))
    return {
      code: 'measurement-unlikely',
      severity: 'warning',
      span: likely,
      says: 'is very unusual: measure again. Nearly all women lie between',
    };
  if (usual && !isWithin(value, usual))
    return {
      code: 'measurement-unusual',
      severity: 'note',
      span: usual,
      says: 'is beyond the usual. Nine in ten women lie between',
    };
  return undefined;
}

/** Millimetres, or radians, in one unit of the file. */
export const unitScale = (name: MeasurementName, units: Unit): number =>
  name === 'shoulderSlope' ? Math.PI / 180 : millimetres[units];
