import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayWidth, padded } from '../../../cli/output/display-width.ts';
import { table } from '../../../cli/output/table.ts';
import { wrapped } from '../../../cli/output/wrap.ts';

const widest = (text: string): number => Math.max(...text.split('\n').map(displayWidth));
const letters = (text: string): string => text.replace(/\s+/g, '');

describe('a text', () => {
  test('that fits is left as it is', () => {
    expect(wrapped('one\n  two  three\n', 20)).toBe('one\n  two  three\n');
  });

  test('goes on under its own beginning, behind its number or its label', () => {
    expect(wrapped('  4. Bust level: waist level 405 - 184 = 221 mm', 30)).toBe(
      '  4. Bust level: waist level\n     405 - 184 = 221 mm',
    );
    expect(wrapped('pieces    2: centre front, side front', 24)).toBe(
      'pieces    2: centre\n          front, side\n          front',
    );
    expect(wrapped('error: nothing can be drafted', 20, 2)).toBe('error: nothing can\n  be drafted');
    expect(wrapped('   hip girth 990 mm: measured', 20, 2)).toBe('   hip girth 990 mm:\n     measured');
  });

  test('never ends a line inside a length', () => {
    expect(wrapped('front width 7 15/16 in', 16)).toBe('front width\n7 15/16 in');
  });

  test('is never wider than it may be, and loses no letter', () => {
    const word = fc.string({
      unit: fc.constantFrom('a', 'é', '寸', '-', '1', '/'),
      minLength: 1,
      maxLength: 30,
    });
    const line = fc.tuple(fc.nat({ max: 30 }), fc.array(word, { maxLength: 12 })).map(([indent, words]) => {
      return ' '.repeat(indent) + words.join(' ');
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 4 }), fc.integer({ min: 20, max: 60 }), (lines, width) => {
        const text = lines.join('\n');
        const set = wrapped(text, width, 2);
        // A length is kept together if there is room for it.
        expect(widest(set)).toBeLessThanOrEqual(width);
        expect(letters(set)).toBe(letters(text));
      }),
    );
  });
});

describe('a table', () => {
  const columns = [
    { title: 'seam' },
    { title: 'length', right: true },
    { title: 'ease', right: true },
    { title: 'why' },
  ] as const;
  const rows = [
    ['side', '12 1/2', '0', 'straight down from the underarm to the waist, both edges alike'],
    ['back princess', '9', '', ''],
  ];

  test('has columns just wide enough, where there is room', () => {
    expect(table(columns, rows, 100)).toBe(
      [
        'seam           length  ease  why',
        'side           12 1/2     0  straight down from the underarm to the waist, both edges alike',
        'back princess       9',
        '',
      ].join('\n'),
    );
  });

  test('breaks the words of its last column where these have some room', () => {
    expect(table(columns, rows, 60)).toBe(
      [
        'seam           length  ease  why',
        'side           12 1/2     0  straight down from the underarm',
        '                             to the waist, both edges alike',
        'back princess       9',
        '',
      ].join('\n'),
    );
  });

  test('else makes a block of each row, without what is empty', () => {
    expect(table(columns, rows, 40)).toBe(
      [
        'seam: side',
        '  length: 12 1/2, ease: 0',
        '  why: straight down from the underarm',
        '      to the waist, both edges alike',
        '',
        'seam: back princess',
        '  length: 9',
        '',
      ].join('\n'),
    );
  });

  test('counts what a terminal shows, not letters', () => {
    expect(displayWidth('e\u0301寸')).toBe(3);
    expect(padded('寸', 4, 'left')).toBe('寸  ');
    expect(padded('寸', 4, 'right')).toBe('  寸');
  });

  test('is never wider than the terminal', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', ' ', '寸'), maxLength: 40 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, cell, cell, cell), { maxLength: 5 }),
        fc.integer({ min: 40, max: 120 }),
        (cells, width) => {
          expect(widest(table(columns, cells, width))).toBeLessThanOrEqual(width);
        },
      ),
    );
  });
});
