import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byGore, goreNames } from '../../../drafts/skirt/by-gore.ts';
import { goreHips } from '../../../drafts/skirt/gore-hips.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { type Mm, quantity } from '../../../engine/pattern/quantity.ts';
import { laid } from '../../engine/pattern/table.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';

/** Half the front less half the back, mm, on the four gores of half a skirt. */
function balance(widthOf: (gore: string) => number): number {
  const [centreFront, sideFront, sideBack, centreBack] = goreNames.map((name) => widthOf(`skirt ${name}`));
  return (centreFront ?? 0) + (sideFront ?? 0) - (sideBack ?? 0) - (centreBack ?? 0);
}

const atHip = (made: Evaluation): number =>
  balance((gore) => {
    const level = pieceOf(made, gore).lines.find(({ name }) => name === 'hip level');
    return edgeLength(level ?? { name: 'no hip level', curves: [] });
  });

const atWaist = (made: Evaluation): number => balance((gore) => edgeLength(edgeOf(made, gore, 'waist')));

describe('the side seam of the skirt', () => {
  test.each(shippedBodies)('lies 0 to 20 mm behind the middle of the half hip: dress of %s', (name) => {
    const hip = atHip(drafted('dress', shippedBody(name)));
    expect(hip).toBeGreaterThan(0);
    expect(hip).toBeLessThan(20);
  });

  test('is moved at the hip by no cup, from A to E, by 2 mm', () => {
    const { name, units, bustGirth, waistGirth, hipGirth, backNeckPointToWaist, stature } =
      shippedBody('leading-lady');
    const girths = { name, units, bustGirth, waistGirth, hipGirth, backNeckPointToWaist, stature };
    const hips = ['A', 'C', 'E'].map((cup) => atHip(drafted('dress', { ...girths, cup })));
    expect(Math.max(...hips) - Math.min(...hips)).toBeLessThan(2);
  });

  test.each(shippedBodies)('hangs straight from waist to hip where the skirt is alone: %s', (name) => {
    const made = drafted('skirt', shippedBody(name));
    expect(made.report.ok).toBe(true);
    expect(atWaist(made) - atHip(made)).toBeCloseTo(0, 3);
  });
});

describe('the gores', () => {
  test('make up the half hip, whatever waists they continue', () => {
    const width = fc.integer({ min: 40, max: 260 });
    const waists = fc.record({
      'centre front': width,
      'side front': width,
      'side back': width,
      'centre back': width,
    });
    fc.assert(
      fc.property(waists, fc.integer({ min: 400, max: 900 }), (waist, halfHip) => {
        const given = (value: number): Mm => quantity(value, 'mm', 'given', { kind: 'choice' });
        const waists = byGore((name) => given(waist[name]));
        const hip = goreHips(laid(), given(halfHip), waists).gores;
        const sum = goreNames.reduce((all, name) => all + hip[name].value, 0);
        expect(sum).toBeCloseTo(halfHip, 9);
      }),
    );
  });

  test('keep to 0 to 20 mm for women of the survey, and stay true', () => {
    for (const body of plausibleBodies(12)) {
      const made = drafted('skirt', body);
      expect(made.report.ok, JSON.stringify(made.report.issues)).toBe(true);
      expect(atHip(made)).toBeGreaterThan(0);
      expect(atHip(made)).toBeLessThan(20);
    }
  });
});
