import { type Body, type MeasurementName, measurementNames, type Provenance } from './body.ts';
import { estimateFrame, estimateStature } from './estimate-frame.ts';
import { estimateGirths } from './estimate-girths.ts';
import { estimateLengths } from './estimate-lengths.ts';
import type { Essential, FoundSizes } from './found.ts';
import { surveyAsked } from './survey-knowledge.ts';

/**
 * Gives every measurement a number. What is given stays as it is; what is missing is estimated: first the frame
 * from the survey, then girths and widths from published tables, then the lengths that must fit each other.
 * Continuous in what is given.
 */
export function completed(given: FoundSizes & Essential): Pick<Body, 'size' | 'known'> {
  const tall = { ...given, stature: given.stature ?? estimateStature(given) };
  const survey = surveyAsked(tall);
  const frame = { ...estimateFrame(survey), ...tall };
  const girths = { ...frame, ...estimateGirths(frame), ...given };
  const all = { ...girths, ...estimateLengths(given, girths, survey), ...given };
  const size: Partial<Record<MeasurementName, number>> = {};
  const known: Partial<Record<MeasurementName, Provenance>> = {};
  for (const name of measurementNames) {
    size[name] = all[name].value;
    known[name] = all[name].known;
  }
  return { size, known } as Pick<Body, 'size' | 'known'>;
}
