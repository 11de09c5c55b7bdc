import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberIn } from '../../../engine/text/units.ts';
import { withLengthsIn } from '../../../engine/text/with-lengths-in.ts';

describe('a sentence of the engine', () => {
  test.each([
    ['A strap of 30 mm has no room.', 'A strap of 1 3/16 in has no room.', 'A strap of 3 cm has no room.'],
    // The marks nearest to these ends, 4 3/4 and 35 3/8, lie beyond them.
    ['takes 0 to 120 mm.', 'takes 0 to 4 11/16 in.', 'takes 0 to 12 cm.'],
    ['takes 900 to 7000 mm.', 'takes 35 1/2 to 275 1/2 in.', 'takes 90 to 700 cm.'],
    [
      'is 900 mm; this draft takes 899.9 to 7000 mm.',
      'is 35.433 in; this draft takes 35.43 to 275.59 in.',
      'is 90 cm; this draft takes 89.99 to 700 cm.',
    ],
    ['takes 12 to 12.5 mm.', 'takes 0.473 to 0.492 in.', 'takes 1.2 to 1.25 cm.'],
    ['takes 50.8 to 101.6 mm.', 'takes 2 to 4 in.', 'takes 5.08 to 10.16 cm.'],
    ['between -6.5 and 6.5 mm', 'between -1/4 and 1/4 in', 'between -0.65 and 0.65 cm'],
    [
      'between 1200 and 3600 mm (hemSweep)',
      'between 47 1/4 and 141 5/8 in (hemSweep)',
      'between 120 and 360 cm (hemSweep)',
    ],
    ['a4, 210 × 297 mm', 'a4, 8 1/4 × 11 3/4 in', 'a4, 21 × 29.7 cm'],
    ['it is 0.3 mm too long', 'it is 0.012 in too long', 'it is 0.03 cm too long'],
    ['lies -6.5 mm below', 'lies -1/4 in below', 'lies -0.65 cm below'],
    ['gather 300\u00a0mm', 'gather 11 3/4\u00a0in', 'gather 30\u00a0cm'],
    ['0.006 per mm', '0.152 per inch', '0.06 per cm'],
    ['for each mm of armhole', 'for each inch of armhole', 'for each cm of armhole'],
    ['over 1290 square mm.', 'over 2 square inches.', 'over 12.9 square cm.'],
  ])('%j is told in inches and in cm', (sentence, inInches, inCm) => {
    expect(withLengthsIn(sentence, 'mm')).toBe(sentence);
    expect(withLengthsIn(sentence, 'in')).toBe(inInches);
    expect(withLengthsIn(sentence, 'cm')).toBe(inCm);
  });

  test.each([
    'Draw a 50-mm square called “test square”.',
    'cut 2 lining, printed side up',
    'a bend of 20°, step 3',
    'page 12.5.mm.svg and commm',
  ])('%j is left as it is', (sentence) => {
    expect(withLengthsIn(sentence, 'in')).toBe(sentence);
  });

  test('never names an end of a range that lies beyond it', () => {
    const ends = fc.uniqueArray(fc.integer({ min: 1, max: 50_000 }), { minLength: 2, maxLength: 2 });
    fc.assert(
      fc.property(ends, (hundredths) => {
        const [low = 0, high = 0] = hundredths.toSorted((a, b) => a - b).map((each) => each / 100);
        const said = withLengthsIn(`takes ${low} to ${high} mm`, 'in').slice('takes '.length, -' in'.length);
        const [from = Number.NaN, to = Number.NaN] = said.split(' to ').map(numberIn);
        expect(from * 25.4).toBeGreaterThanOrEqual(low - 1e-6);
        expect(to * 25.4).toBeLessThanOrEqual(high + 1e-6);
        expect(from).toBeLessThan(to);
      }),
    );
  });

  test('never lets two lengths that differ read alike', () => {
    // Both are nearest to half an inch.
    expect(withLengthsIn('is not 12.7 mm away everywhere: at its worst place it is 12.31 mm.', 'in')).toBe(
      'is not 0.5 in away everywhere: at its worst place it is 0.485 in.',
    );
    const lengths = fc.uniqueArray(fc.integer({ min: 1, max: 50_000 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(lengths, (hundredths) => {
        const said = withLengthsIn(hundredths.map((each) => `x ${each / 100} mm`).join('; '), 'in');
        const figures = said.split('; ').map((each) => numberIn(each.slice(2, -3)) ?? Number.NaN);
        expect(new Set(figures).size).toBe(hundredths.length);
        for (const [i, each] of hundredths.entries())
          expect(Math.abs((figures[i] ?? 0) * 25.4 - each / 100)).toBeLessThanOrEqual(25.4 / 16 + 1e-9);
      }),
    );
  });
});
