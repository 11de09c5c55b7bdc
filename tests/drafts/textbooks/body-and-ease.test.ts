import { describe, expect, it } from 'vitest';
import { drafted, shippedBodies, shippedBody } from '../drafted.ts';
import { apart, armholeOf, blocks, inches, lengthOf, logged, plainFamily } from './measured.ts';

const skirts = shippedBodies.map((name) => [name, drafted('skirt', shippedBody(name))] as const);

describe('the proportions of the body (Extension Circular 306, 1943)', () => {
  // Armpit, hip and knee lie at the quarters of the stature.
  it.each(skirts)(
    'put the armpit at three quarters, as our lengths do to 1 %% of the stature: %s',
    (_, { body }) => {
      const { stature, waistHeight, backNeckPointToWaist, scyeDepth } = body.size;
      expect(apart((waistHeight + backNeckPointToWaist - scyeDepth) / stature, 3 / 4)).toBeLessThan(0.01);
    },
  );

  it.each(skirts)('put the hip at half, as our lengths do to 1.5 %%: %s', (_, { body }) => {
    const { stature, waistHeight, waistToHip } = body.size;
    expect(apart((waistHeight - waistToHip) / stature, 1 / 2)).toBeLessThan(0.015);
  });

  it.each(skirts)('put the knee at a quarter; a knee-length hem hangs at its upper edge: %s', (_, skirt) => {
    const { stature, waistHeight } = skirt.body.size;
    const hem = (waistHeight - lengthOf(skirt, 'skirt centre front', 'centre front')) / stature;
    expect(hem).toBeGreaterThan(1 / 4);
    expect(hem).toBeLessThan(1 / 4 + 0.02);
  });
});

describe('ease', () => {
  // New Mexico State University, Guide C-228, Pattern Alteration: 3 to 4 in at the bust of a fitted garment.
  it.each([3, 4])('of %i in at the bust (Guide C-228) closes, and so does every other girth', (ease) => {
    const bodice = drafted('bodice', shippedBody('leading-lady'), { bustEase: inches(ease) });
    const bust = bodice.report.girths.find(({ level }) => level === 'bust');
    expect(bust?.finished).toBeCloseTo(bodice.body.size.bustGirth + inches(ease), 3);
    expect(bodice.report.ok).toBe(true);
  });

  // Ours is closer unless asked: 60 mm, and 50 without sleeves.
  it('at the bust is less than the 3 in of Guide C-228 unless chosen, by no more than 1 in, and least without sleeves', () => {
    const easeOf = (garment: string) =>
      logged(drafted(garment, shippedBody('leading-lady')), 'Ease at the bust');
    for (const garment of ['dress', 'trial']) {
      expect(easeOf(garment)).toBeLessThan(inches(3));
      expect(easeOf(garment)).toBeGreaterThan(inches(2));
    }
    expect(easeOf('bodice')).toBeLessThan(easeOf('dress'));
  });

  // A sleeve 2 in wider than the arm: Armstrong, Patternmaking for Fashion Design, 2nd ed., p. 68, read second-hand; ours is 50 mm.
  it.each(['leading-lady', 'scene-painter'])(
    'at the upper arm is 2 in before the sleeve is made full: %s',
    (name) => {
      for (const made of [drafted('dress', shippedBody(name)), ...plainFamily(shippedBody(name))]) {
        const arm = made.report.girths.find(({ level }) => level === 'upper arm');
        expect(apart(arm?.finished ?? 0, made.body.size.upperArmGirth + inches(2))).toBeLessThan(1);
      }
    },
  );

  // About 1 1/2 in, 1 1/4 to 1 3/4: the same, read second-hand.
  it.each(blocks)(
    'in a plain cap is 1 1/2 in over the armhole, all of it between the notches: %s',
    (_, block) => {
      const cap = (...edges: readonly string[]) => lengthOf(block, 'sleeve', ...edges);
      const whole = cap('cap back underarm', 'crown', 'cap front underarm');
      expect(whole - armholeOf(block)).toBeCloseTo(inches(1.5), 3);
      const crown = block.report.seams.find(({ name }) => name === 'armhole, crown');
      expect(cap('crown') - (crown?.lengthB ?? 0)).toBeCloseTo(inches(1.5), 3);
    },
  );

  // Of the hip 2 to 3 in, of the waist 1/2 to 1 1/4 in: from memory.
  it('at waist and hip is what close-fitting dresses have, where the skirt hardly flares', () => {
    const { body, report } = drafted('dress', shippedBody('leading-lady'), { skirtFullness: 1.1 });
    const girth = (level: string): number =>
      report.girths.find((each) => each.level === level)?.finished ?? Number.NaN;
    const [waist, hip] = [girth('waist') - body.size.waistGirth, girth('hip') - body.size.hipGirth];
    expect(waist).toBeGreaterThan(inches(0.5));
    expect(waist).toBeLessThan(inches(1.25));
    expect(hip).toBeGreaterThan(inches(2));
    expect(hip).toBeLessThan(inches(3));
  });
});
