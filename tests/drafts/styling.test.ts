import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Choice } from '../../engine/pattern/styling.ts';
import { surveyBody } from '../plausible-bodies.ts';
import { uniform } from '../uniform.ts';
import { shippedBody } from './drafted.ts';

/** What a draft may say to choices that no cloth or no body could carry; anything else is a drawing gone wrong. */
const refusals = [
  'hem-out-of-reach',
  'fullness-out-of-reach',
  'styling-cannot-agree',
  'cannot-agree',
  'measurements-contradict',
  'drawstring-refused',
  'strap-beyond-armhole',
  'sleeve-too-short',
];

/** What went wrong, other than being refused by name. */
function faults(garment: string, body: unknown, styling: unknown): readonly string[] {
  const draft = garments.find(({ name }) => name === garment);
  if (!draft) throw new Error(`no garment ${garment}`);
  const result = evaluate(draft, body, styling);
  const issues = result.ok ? result.value.report.issues : result.issues;
  const errors = issues.filter(({ severity }) => severity === 'error');
  return errors
    .filter(({ code }) => result.ok || !refusals.includes(code))
    .map(({ code, message }) => `${code}: ${message}`);
}

/** Any value a choice allows. */
function anyOf(choice: Choice): fc.Arbitrary<number | string> {
  if (choice.kind === 'word') return fc.constantFrom(...choice.words);
  const { min, max } = choice;
  if (choice.unit === 'count') return fc.integer({ min, max });
  const number = uniform(min, max);
  return choice.kind === 'number' ? number : fc.oneof(fc.constant('auto'), number);
}

const stylingOf = (choices: readonly Choice[]): fc.Arbitrary<Record<string, number | string>> =>
  fc.record(Object.fromEntries(choices.map((choice) => [choice.name, anyOf(choice)])));

const woman = fc.integer({ min: 1, max: 5_000 }).map(surveyBody);

describe('over the whole range of its choices', () => {
  it.each(garments)(
    'the $name is drawn true or refused by name, whichever are combined',
    ({ name, choices }) => {
      fc.assert(
        fc.property(woman, stylingOf(choices), (body, styling) => {
          expect(faults(name, body, styling)).toEqual([]);
        }),
        { numRuns: 60, endOnFailure: true },
      );
    },
  );

  const [dress] = garments;
  it.each(dress?.choices ?? [])(
    'the dress is drawn true or refused by name at both ends of $name',
    (choice) => {
      const ends = choice.kind === 'word' ? choice.words : [choice.min, choice.max];
      for (const body of ['leading-lady', 'scene-painter', 'understudy'])
        for (const end of ends)
          expect(
            faults('dress', shippedBody(body), { necklineGathers: 'fixed', [choice.name]: end }),
            `${body}, ${end}`,
          ).toEqual([]);
    },
  );
});
