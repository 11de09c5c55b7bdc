import type { Body } from '../body/body.ts';
import { measurementWords } from '../body/measurement-words.ts';
import type { Issue } from '../issue.ts';
import { fixed } from '../text/figure.ts';
import type { Form } from './form.ts';

/** What a dressmaker should know of a form: measurements it cannot give back, and that it was made for a grown woman. */
export function formRemarks(form: Form, { wearer }: Pick<Body, 'wearer'>): readonly Issue[] {
  const missed = form.report.tapes
    .filter(({ held }) => !held)
    .map(
      ({ measurement, given, taken, bound }): Issue => ({
        code: 'form-misses-measurement',
        severity: 'warning',
        path: measurement,
        value: taken,
        limits: { min: given - bound, max: given + bound, unit: 'mm' },
        message: `No likely form gives back all measurements: on this one the ${measurementWords(measurement)} is ${fixed(taken, 1)} mm instead of ${fixed(given, 1)} mm.`,
      }),
    );
  return wearer === 'child'
    ? [
        ...missed,
        {
          code: 'form-of-a-child',
          severity: 'warning',
          path: 'wearer',
          message: 'The form is built like a grown woman, and only as large as the child.',
        },
      ]
    : missed;
}
