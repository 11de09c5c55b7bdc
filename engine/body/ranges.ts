import type { Issue } from '../issue.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { childShare, isWithin, limitsOf } from './limits.ts';
import { inUnit, millimetres, type Unit } from './units.ts';
import { measurementWords } from './words.ts';

/**
 * Refuses numbers that no body has and points out those that few women have. A child's possible
 * sizes are smaller. Numbers and limits are in the file's unit, the slope in degrees.
 */
export function outOfRange(
  numbers: Readonly<Partial<Record<MeasurementName, number>>>,
  units: Unit,
  child: boolean,
): readonly Issue[] {
  return measurementNames.flatMap((name): readonly Issue[] => {
    const value = numbers[name];
    if (value === undefined) return [];
    const unit = name === 'shoulderSlope' ? 'degrees' : units;
    const scale = unitScale(name, units);
    const inFile = ([min, max]: readonly [number, number]) => [min / scale, max / scale] as const;
    const { likely, possible } = limitsOf[name];
    const allowed = inFile([possible[0] * (child ? childShare : 1), possible[1]]);
    const about = (
      code: string,
      severity: Issue['severity'],
      limits: readonly [number, number],
      say: string,
    ) => ({
      code,
      severity,
      path: name,
      value,
      limits: { min: limits[0], max: limits[1], unit },
      message: `The ${measurementWords(name)} of ${inUnit(value, unit)} ${say} ${inUnit(limits[0], unit)} and ${inUnit(limits[1], unit)}.`,
    });
    if (!isWithin(value, allowed))
      return [about('measurement-out-of-range', 'error', allowed, 'is impossible: it lies between')];
    if (!isWithin(value, inFile(likely)))
      return [
        about(
          'measurement-unlikely',
          'warning',
          inFile(likely),
          'is unusual, measure again: most lie between',
        ),
      ];
    return [];
  });
}

/** Millimetres, or radians, in one unit of the file. */
export const unitScale = (name: MeasurementName, units: Unit): number =>
  name === 'shoulderSlope' ? Math.PI / 180 : millimetres[units];
