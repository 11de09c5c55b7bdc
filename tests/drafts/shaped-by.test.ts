import { describe, expect, test } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { type MeasurementName, measurementNames } from '../../engine/body/body.ts';
import { readBody } from '../../engine/body/read.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { resolveStyling } from '../../engine/pattern/styling-values.ts';
import { sensitivities } from '../../engine/sensitivity/sensitivity.ts';
import { shippedBody } from './drafted.ts';

/** A length answers to a measurement when it moves by more than this for each mm: well beyond the solver's noise. */
const moves = 1e-4;

type Words = Readonly<Record<string, string>>;

/** The measurements that move any length of a garment for a woman; nothing where the choices cannot go together. */
function moving(draft: Draft, chosen: Words, woman: string): readonly MeasurementName[] | undefined {
  const body = readBody(shippedBody(woman));
  const styling = resolveStyling(draft.choices, chosen);
  if (!body.ok || !styling.ok) throw new Error(`cannot be read: ${JSON.stringify(chosen)}`);
  const found = sensitivities(draft, body.value, styling.value);
  if (found.ok)
    return found.value
      .filter(({ slopes }) => slopes.some(({ perMm }) => Math.abs(perMm) > moves))
      .map(({ measurement }) => measurement);
  const [{ code, message } = { code: '', message: '' }] = found.issues;
  if (code !== 'styling-cannot-agree') throw new Error(`${JSON.stringify(chosen)}: ${message}`);
  return undefined;
}

/** Choices that a garment has, of some. */
const known = ({ choices }: Draft, words: Words): Words =>
  Object.fromEntries(
    Object.entries(words).filter(([name]) => choices.some((choice) => choice.name === name)),
  );

/** What a word is tried with where a gathered front or a strap has no place for it. */
const plain = { shoulder: 'whole', front: 'plain' };

/** Every other word of each choice, by itself or with what it needs, for the leading lady. */
const byWords = (draft: Draft): readonly MeasurementName[] =>
  draft.choices.flatMap((choice) =>
    choice.kind === 'word' && choice.name !== 'notchType'
      ? choice.words
          .filter((word) => word !== choice.default)
          .flatMap((word) => {
            const alone = moving(draft, { [choice.name]: word }, 'leading-lady');
            if (alone) return alone;
            const together = { ...known(draft, plain), [choice.name]: word };
            const found = moving(draft, together, 'leading-lady');
            if (!found) throw new Error(`${choice.name} ${word} is refused whatever else is chosen`);
            return found;
          })
      : [],
  );

/**
 * As it is by default and with a sleeve to the wrist; for two women, since the bust of the leading lady, not her armscye,
 * says how low her underarm lies.
 */
const byDefault = (draft: Draft): readonly MeasurementName[] =>
  ['leading-lady', 'prompter'].flatMap((woman) =>
    [{}, { sleeve: 'plain', sleeveTo: 'wrist' }].flatMap(
      (words) => moving(draft, known(draft, words), woman) ?? [],
    ),
  );

describe.each(garments.map((draft) => [draft.name, draft] as const))('the %s', (_, draft) => {
  test('is shaped by the measurements that it says, and by no others', () => {
    const found = new Set([...byDefault(draft), ...byWords(draft)]);
    expect(measurementNames.filter((name) => found.has(name))).toEqual(
      measurementNames.filter((name) => draft.shapedBy.includes(name)),
    );
  });

  test('says each of them once', () => {
    expect(new Set(draft.shapedBy).size).toBe(draft.shapedBy.length);
  });
});
