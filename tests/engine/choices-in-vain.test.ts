import { describe, expect, it } from 'vitest';
import { dress } from '../../drafts/dress.ts';
import { choicesInVain } from '../../engine/choices-in-vain.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { shippedBody } from '../drafts/drafted.ts';

function inVain(styling: Readonly<Record<string, number | string>>): readonly string[] {
  const made = evaluate(dress, shippedBody('leading-lady'), styling);
  if (!made.ok) throw new Error(made.issues.map(({ message }) => message).join('\n'));
  const issues = choicesInVain(dress, made.value);
  expect(issues.every(({ code, severity }) => code === 'choice-in-vain' && severity === 'note')).toBe(true);
  return issues.map(({ path }) => path);
}

describe('a choice that changes nothing', () => {
  it.each([
    ['the fullness of a sleeve that is not there', { sleeve: 'none', sleeveFullness: 2 }, ['sleeveFullness']],
    ['the width of a strap under whole shoulders', { shoulder: 'whole', strapWidth: 40 }, ['strapWidth']],
    [
      'what is gathered of a plain front',
      { front: 'plain', insertFullness: 2, necklineGathers: 'fixed' },
      ['insertFullness', 'necklineGathers'],
    ],
  ])('is told: %s', (_, styling, told) => {
    expect([...inVain(styling)].sort()).toEqual(told);
  });

  it.each([
    [{ sleeveFullness: 2 }],
    [{ notchType: 'slit' }],
    [{ seamFinish: 'pinked' }],
    [{ hemAllowance: 30, skirtTo: 'calf' }],
    [{ skirtLining: 'none' }],
    [{}],
  ])('is not what %j says', (styling) => {
    expect(inVain(styling)).toEqual([]);
  });
});
