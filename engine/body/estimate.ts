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
  const stature = given.stature ?? estimateStature(given);
  const survey = surveyAsked({ ...given, stature });
  // Two objects spread into one, V8 puts together very slowly.
  const frame = Object.assign(estimateFrame(given, survey), given, { stature });
  const girths = Object.assign(estimateGirths(frame), frame);
  const lengths = estimateLengths(given, girths, survey);
  const size: Partial<Record<MeasurementName, number>> = {};
  const known: Partial<Record<MeasurementName, Provenance>> = {};
  for (const name of measurementNames) {
    const found = isLength(lengths, name) ? (given[name] ?? lengths[name]) : girths[name];
    size[name] = found.value;
    known[name] = found.known;
  }
  return { size, known } as Pick<Body, 'size' | 'known'>;
}

const isLength = <Lengths extends object>(lengths: Lengths, name: string): name is string & keyof Lengths =>
  name in lengths;
