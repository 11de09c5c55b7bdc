import { type Body, type MeasurementName, measurementNames } from './body.ts';
import { estimateFrame } from './estimate-frame.ts';
import { estimateGirths } from './estimate-girths.ts';
import { estimateLengths } from './estimate-lengths.ts';
import type { Essential, FoundSize, FoundSizes } from './found.ts';

/**
 * Gives every measurement a number. What is given stays as it is; what is missing is estimated: first the frame
 * from the survey, then girths and widths from published tables, then the lengths that must fit each other.
 * Continuous in what is given.
 */
export function completed(given: FoundSizes & Essential): Pick<Body, 'size' | 'known'> {
  const frame = { ...estimateFrame(given), ...given };
  const girths = { ...frame, ...estimateGirths(frame), ...given };
  const all = { ...girths, ...estimateLengths(given, girths), ...given };
  return { size: column(all, ({ value }) => value), known: column(all, ({ known }) => known) };
}

const column = <T>(
  all: Readonly<Record<MeasurementName, FoundSize>>,
  of: (found: FoundSize) => T,
): Readonly<Record<MeasurementName, T>> =>
  Object.fromEntries(measurementNames.map((name) => [name, of(all[name])])) as Record<MeasurementName, T>;
