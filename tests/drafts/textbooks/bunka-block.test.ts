import { describe, expect, it } from 'vitest';
import { edgeStart } from '../../../engine/geometry/edge.ts';
import { drafted, edgeOf, figureOf } from '../drafted.ts';
import { apart, logged } from './measured.ts';

// The Bunka block, 8th generation (Bunka Fashion Series, Garment Design 1): lengths in cm from B, the bust. The reference
// body of B 83, waist 64 and back length 38 was read on two pages; every formula here is from memory. Its room of 12 cm
// at the bust and 6 at the waist is given to ours, and what else ours measures is estimated.
const blocks = [
  [83, 64],
  [88, 68],
  [96, 76],
].map(([bust = 0, waist = 0]) => {
  const body = {
    name: `bust ${bust}`,
    units: 'cm',
    bustGirth: bust,
    waistGirth: waist,
    hipGirth: bust + 8,
    backNeckPointToWaist: 38,
  };
  return { bust, waist, bodice: drafted('bodice', body, { bustEase: 120, waistEase: 60 }) };
});

describe('the Bunka block (from memory)', () => {
  it.each(blocks)('takes (B/2 + 6) - (W/2 + 3) in at the half waist, as ours does: bust $bust', (of) => {
    const half = of.bust / 2 + 6 - (of.waist / 2 + 3);
    expect(logged(of.bodice, 'Waist suppression of the half')).toBeCloseTo(10 * half, 1);
  });

  it.each(blocks)(
    'is B/8 + 7.4 wide across the half back, as ours is to 3 mm: bust $bust',
    ({ bust, bodice }) => {
      const beyond = figureOf(bodice, 'half across back at mid armhole, beyond the body');
      expect(apart(bodice.body.size.acrossBackWidth / 2 + beyond, 10 * (bust / 8 + 7.4))).toBeLessThan(3);
    },
  );

  it.each(blocks)('is B/5 + 8.3 high above the bust in front, as ours is to 5 mm: bust $bust', (of) => {
    const high = logged(of.bodice, 'Side neck above the bust level');
    expect(apart(high, 10 * (of.bust / 5 + 8.3))).toBeLessThan(5);
  });

  // B/12 + 13.7 with 12 cm of room; our underarm, for a bodice closer than a block, lies up to 1.6 cm higher.
  it.each(blocks)('has a deeper armhole than ours, by less than 2 cm: bust $bust', ({ bust, bodice }) => {
    const deeper = 10 * (bust / 12 + 13.7) - edgeStart(edgeOf(bodice, 'side back', 'side')).y;
    expect(deeper).toBeGreaterThan(0);
    expect(deeper).toBeLessThan(20);
  });

  // B/24 + 3.6 behind, 0.2 less in front, and a rise of a third. Ours goes by the neck, not by the bust.
  it.each(blocks)('has a wider neck than ours, by less than 1 cm: bust $bust', ({ bust, bodice }) => {
    const width = bust / 24 + 3.6;
    const wider = 10 * width - logged(bodice, 'Back neck width');
    expect(wider).toBeGreaterThan(0);
    expect(wider).toBeLessThan(10);
    expect(apart(logged(bodice, 'Side neck above the back neck point'), (10 * width) / 3)).toBeLessThan(4);
    expect(logged(bodice, 'Back neck width') - logged(bodice, 'Front neck width')).toBeCloseTo(2, 6);
  });

  it.each(blocks)(
    'slopes its shoulder 22 degrees in front and 18 behind, ours to 3: bust $bust',
    ({ bodice }) => {
      expect(apart(logged(bodice, 'Front shoulder slope'), 22)).toBeLessThan(3);
      expect(apart(logged(bodice, 'Back shoulder slope'), 18)).toBeLessThan(3);
    },
  );

  // B/4 - 2.5 degrees, of which a part stays in the armhole as room; ours closes the whole of its smaller dart.
  it.each(blocks)(
    'has a larger bust dart than ours, by less than 7 degrees: bust $bust',
    ({ bust, bodice }) => {
      const larger = bust / 4 - 2.5 - logged(bodice, 'Bust dart angle');
      expect(larger).toBeGreaterThan(0);
      expect(larger).toBeLessThan(7);
    },
  );
});
