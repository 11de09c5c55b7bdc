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

/** The measurements that move any length of a garment for the leading lady. */
function moving(draft: Draft, chosen: Readonly<Record<string, string>>): readonly MeasurementName[] {
  const body = readBody(shippedBody('leading-lady'));
  const styling = resolveStyling(draft.choices, chosen);
  if (!body.ok || !styling.ok) throw new Error(`cannot be read: ${JSON.stringify(chosen)}`);
  const found = sensitivities(draft, body.value, styling.value);
  if (!found.ok) throw new Error(`${JSON.stringify(chosen)}: ${found.issues[0]?.message}`);
  return found.value
    .filter(({ slopes }) => slopes.some(({ perMm }) => Math.abs(perMm) > moves))
    .map(({ measurement }) => measurement);
}

/** The styling as it is by default, and with each other word of each choice in turn. */
const stylings = ({ choices }: Draft): readonly Readonly<Record<string, string>>[] => [
  {},
  ...choices.flatMap((choice) =>
    choice.kind === 'word' && choice.name !== 'notchType'
      ? choice.words.filter((word) => word !== choice.default).map((word) => ({ [choice.name]: word }))
      : [],
  ),
];

describe.each(garments.map((draft) => [draft.name, draft] as const))('the %s', (_, draft) => {
  test('is shaped by the measurements that it says, and by no others', () => {
    const found = new Set(stylings(draft).flatMap((chosen) => moving(draft, chosen)));
    expect(measurementNames.filter((name) => found.has(name))).toEqual(
      measurementNames.filter((name) => draft.shapedBy.includes(name)),
    );
  });

  test('says each of them once', () => {
    expect(new Set(draft.shapedBy).size).toBe(draft.shapedBy.length);
  });
});
