import type { MeasurementName } from '../body.ts';
import { isWithin, limitsOf } from '../limits.ts';
import { girths } from '../mistaken.ts';
import { usualError } from '../reconcile/usual-error.ts';
import type { Foretold } from './standing.ts';

/**
 * What must speak for exchanged digits until a number stops the draft, and until it is named in a warning: natural
 * logarithms of how many times likelier that reading makes what was written. Of 12,000 sets of women written down right,
 * each in three units, one reaches 8.1 (a cup of 28 cm on a bust of 80), the others 7; one in a hundred reaches 3.
 */
export const stopping = 8.5;
export const warning = 3;

/** No reading is trusted nearer than so, mm, before its digits are blamed. */
const coarse = 10;

/** Below so many standard deviations nothing can speak so much for another reading. */
export const leastOff = (evidence: number): number => Math.sqrt(2 * evidence);

/**
 * How much speaks for one measurement, by what others make of it, having been meant otherwise (mm): the logarithm of the likelihood ratio of the two
 * readings, each as the others leave her open. No test catches more of such slips at as few false alarms (J. Neyman and
 * E. S. Pearson, On the problem of the most efficient tests of statistical hypotheses, 1933), if she is as the survey says.
 * Girths differ by shares, as large women differ more than small ones do. Nothing speaks for what hardly any woman has,
 * and for no reading more than `most`.
 */
export function evidenceFor(
  name: MeasurementName,
  written: number,
  foretold: Foretold,
): { readonly most: number; readonly ofReading: (mm: number) => number } {
  const { mean, spread, usual } = foretold;
  const variance = spread ** 2 + Math.max(0, coarse ** 2 - usualError[name] ** 2);
  const off = (length: number): number =>
    girths.has(name) ? usual * Math.log(length / mean) : length - mean;
  const most = off(written) ** 2;
  return {
    most: most / (2 * variance),
    ofReading: (mm) => (isWithin(mm, limitsOf[name].likely) ? (most - off(mm) ** 2) / (2 * variance) : 0),
  };
}
