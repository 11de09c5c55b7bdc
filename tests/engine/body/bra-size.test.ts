import { describe, expect, test } from 'vitest';
import { usualCup } from '../../../engine/body/bra-size.ts';
import { readBody } from '../../../engine/body/read.ts';
import { woman } from './women.ts';

const said = (more: object) =>
  readBody({ ...woman, ...more }).issues.filter(({ severity }) => severity === 'error');

describe('a bra’s size', () => {
  // The letters beyond D are from memory; A to D are the same with most makers.
  test.each<[string, string | undefined]>([
    ['C', 'C'],
    ['c', 'C'],
    ['75C', 'C'],
    ['80 F', 'F'],
    ['34C', 'C'],
    ['34DD', 'E'],
    ['DD', 'E'],
    ['36F', 'G'],
    ['Z', undefined],
    ['75', undefined],
    ['large', undefined],
  ])('%s comes to cup %s', (written, cup) => {
    expect(usualCup(written)).toBe(cup);
  });

  test.each(['DD', 'c', '75C', '34DD'])(
    'is no cup: %s is refused with what each letter means and which to write',
    (cup) => {
      const [issue] = said({ cup });
      expect(issue).toMatchObject({ code: 'unknown-cup', path: 'cup', value: cup });
      expect(issue?.message).toContain('C for 16 to 18');
      expect(issue?.message).toContain('underBustGirth');
      expect(issue?.message).toMatch(/write cup: [A-J]/);
    },
  );

  test.each<[string, unknown]>([
    ['braSize', '34DD'],
    ['bra', '75C'],
    ['cupSize', 'D'],
    ['band', 75],
  ])('is not read from a field %s', (field, value) => {
    const [issue, ...others] = said({ [field]: value });
    expect(others).toEqual([]);
    expect(issue).toMatchObject({ code: 'bra-size-not-read', path: field });
    expect(issue?.message).toContain('AA for 10 to 12 cm');
  });
});

describe('a name that is not known', () => {
  test.each<[string, string]>([
    ['wrist', 'wristGirth'],
    ['unterBust', 'underBustGirth'],
    ['armGirth', 'upperArmGirth'],
    ['hips', 'hipGirth'],
    ['backLength', 'backNeckPointToWaist'],
    ['Bust', 'bustGirth'],
    ['chest', 'upperChestGirth'],
    ['armhole', 'armscyeGirth'],
  ])('%s is answered with the nearest, %s among them, and no more than three', (field, name) => {
    const [issue] = said({ [field]: 20 });
    expect(issue).toMatchObject({ code: 'unknown-field', path: field });
    const [, proposed = ''] = /Do you mean (.*)\?$/.exec(issue?.message ?? '') ?? [];
    expect(proposed.split(' or ')).toContain(name);
    expect(proposed.split(' or ').length).toBeLessThanOrEqual(3);
  });

  test('is not answered with all there are, where none is near', () => {
    const [issue] = said({ shoeSize: 38 });
    expect(issue?.message.length).toBeLessThan(150);
  });
});
