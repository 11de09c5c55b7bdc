import type { Issue } from '../../issue.ts';
import { fixed } from '../../text/figure.ts';
import { inUnit } from '../../text/length.ts';
import { listed } from '../../text/listed.ts';
import type { Unit } from '../../text/units.ts';
import type { MeasurementName } from '../body.ts';
import { measurementWords } from '../measurement-words.ts';
import { unitScale } from '../ranges.ts';
import type { Moved } from './reconcile.ts';

/** What was moved, each as a warning with its number, the new one, and how far they lie apart in usual errors. */
export const movedIssues = (moved: readonly Moved[], units: Unit): readonly Issue[] =>
  moved.map(({ name, written, value, usualError, suspicion, orElse }) => {
    const scale = unitScale(name, units);
    const errors = Math.abs(value - written) / usualError;
    const from = `The ${measurementWords(name)} of ${inUnit(written / scale, units)}`;
    const apart = `${fixed(errors, 1)} times the usual error of a tape there (${inUnit(usualError / scale, units)})`;
    const or = orElse.length > 0 ? ` It may instead be the ${orWords(orElse)}.` : '';
    const misread = suspicion === 'misread';
    const first = {
      misread: '',
      'first to blame': ` If one of them was misread, it is most likely this: measure it first.${or}`,
      'one of two': ` If one of them was misread, it is either this or the ${orWords(orElse)}: measure these two again.`,
      none: '',
    }[suspicion];
    return {
      code: misread ? 'measurement-misread' : 'measurement-reconciled',
      severity: 'warning',
      path: name,
      value: written / scale,
      message: misread
        ? `${from} looks misread and is taken as ${inUnit(value / scale, units)}, ${apart}.${or} Measure it again.`
        : `${from} contradicted others and is taken as ${inUnit(value / scale, units)}, ${apart}.${first}`,
    };
  });

/** "waist girth or hip girth". */
const orWords = (names: readonly MeasurementName[]): string => names.map(measurementWords).join(' or ');

/** Where the limits cannot hold because too much in them is sure. */
export const sureOfTooMuch = (between: readonly MeasurementName[]): Issue => ({
  code: 'sure-of-too-much',
  severity: 'error',
  path: 'sure',
  message: `These contradict each other, and those that are not listed as sure cannot be moved so far: ${listed(between.map(measurementWords))}. Measure them again, or be sure of fewer.`,
});

/** Says that there is a way out besides measuring again. */
export const reconcileOffered: Issue = {
  code: 'reconcile-offered',
  severity: 'note',
  path: 'reconcile',
  message:
    'Where they cannot be measured again, write reconcile: true in her file: contradicting measurements are then moved to the most likely body behind them, and each move is said. Those under sure: [...] stay.',
};
