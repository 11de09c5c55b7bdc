import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../../cli/files/fonts.ts';
import { lettersOf } from '../../../../engine/render/pdf/letters.ts';

const { regular, bold } = await readFonts();
const inLetters = await lettersOf([regular, bold]);

describe('a name in a PDF', () => {
  it.each(['Łódź', 'Ελένη', 'Анна', 'Nguyễn Thị', 'O’Brien, 2', 'Zoë'])(
    'keeps the letters that the font has: %s',
    (name) => {
      expect(inLetters(name)).toBe(name);
    },
  );

  it.each(['ليلى', '李娜', 'שרה', '김', 'さくら', 'अनन्या', '😀', 'ᏣᎳᎩ', 'ꬰ', 'Ꙋ', '℻'])(
    'is spelled in Latin letters where it has not: %s',
    (name) => {
      expect(inLetters(name)).toMatch(/^[ -~]+$/);
    },
  );

  it('turns no way of writing round', () => {
    expect(inLetters('a\u202Ebc\u2069')).toBe('abc');
  });
});
