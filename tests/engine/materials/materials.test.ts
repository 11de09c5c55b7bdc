import { describe, expect, test } from 'vitest';
import { clothNeeded, leastCloth } from '../../../engine/materials/cloth-needed.ts';
import { clothWidths } from '../../../engine/materials/widths.ts';
import { clothTable, cutTable, notionToBuy } from '../../../engine/materials/words.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment, cutLines } = drafted('skirt', shippedBody('leading-lady'));
const widths = clothWidths('cm');
const needed = clothNeeded(garment, cutLines, widths);

describe('the cloth that a garment takes', () => {
  test('is planned for each width, never below what no lay goes under', () => {
    const [self] = needed;
    expect(self?.widths.map(({ called }) => called)).toEqual(['90 cm', '115 cm', '140 cm', '150 cm']);
    for (const { least = 0, needed: length = 0 } of self?.widths ?? []) {
      expect(least).toBeGreaterThan(0);
      expect(length).toBeGreaterThanOrEqual(least);
    }
  });

  test('is the same every time', () => {
    expect(clothNeeded(garment, cutLines, widths)).toEqual(needed);
  });

  test('has for each width the bound that is told without a plan', () => {
    const bounds = leastCloth(garment, cutLines, widths);
    expect(bounds.map(({ widths: own }) => own.map(({ least }) => least))).toEqual(
      needed.map(({ widths: own }) => own.map(({ least }) => least)),
    );
  });

  test('is open where a piece is too broad for half of it, and too narrow where for all of it', () => {
    const own = leastCloth(
      garment,
      cutLines,
      [300, 600, 900].map((width) => ({ width, called: '' })),
    );
    expect(own[0]?.widths.map(({ laid }) => laid)).toEqual([undefined, 'open', 'folded']);
  });
});

describe('a dress that has room on folded cloth only where it is wide', () => {
  // Open 54 in take less than folded 60 in would by its own plan.
  const broad = drafted('dress', shippedBody('scene-painter'));
  const inches = clothWidths('in');

  test('takes no more of a wider cloth than of a narrower one', () => {
    for (const need of clothNeeded(broad.garment, broad.cutLines, inches)) {
      const lengths = need.widths.map((width) => width.needed ?? Number.POSITIVE_INFINITY);
      expect(lengths, need.cloth).toEqual([...lengths].sort((a, b) => b - a));
      for (const { least = 0, needed: length = 0 } of need.widths)
        expect(length).toBeGreaterThanOrEqual(least);
    }
  });
});

describe('widths', () => {
  test('are those that cloth has where it is sold, no conversions', () => {
    expect(clothWidths('in').map(({ width }) => Number((width / 25.4).toFixed(6)))).toEqual([36, 45, 54, 60]);
  });
});

describe('in words', () => {
  test('the cut list has a column for each cloth', () => {
    expect(cutTable(garment)).toEqual({
      titles: ['to cut', 'self'],
      rows: garment.pieces.map(({ number, name, cut }) => [
        `${number} ${name}`,
        cut[0]?.onFold ? '1 on the fold' : '2, a pair',
      ]),
    });
  });

  test('cloth is said in the unit of the reader', () => {
    const cloth = [
      {
        cloth: 'self' as const,
        widths: [
          { width: 900, called: '90 cm' },
          { width: 1150, called: '115 cm', laid: 'open' as const, least: 1999, needed: 2310 },
        ],
      },
    ];
    expect(clothTable(cloth, 'cm').rows).toEqual([
      ['self', 'too narrow', '2.4 m open'],
      ['no lay under', '-', '1.99 m open'],
    ]);
    expect(clothTable(cloth, 'in').rows[0]).toEqual(['self', 'too narrow', '2 5/8 yd open']);
  });

  test.each([
    [{ name: 'elastic', count: 2, length: 290, note: '' }, '0.6 m'],
    [{ name: 'zip', count: 1, length: 500, note: '', got: 'singly' }, '1 × 500 mm'],
    [{ name: 'strips', count: 2, length: 450, note: '', got: 'off interfacing' }, '0.5 m of interfacing'],
    [{ name: 'hook and eye', count: 1, length: 0, note: '' }, '1'],
  ] as const)('%j is bought as %s', (notion, said) => {
    expect(notionToBuy(notion, 'mm')).toBe(said);
  });
});
