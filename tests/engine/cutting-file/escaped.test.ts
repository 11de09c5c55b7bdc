import { describe, expect, it } from 'vitest';
import { blockNames } from '../../../engine/cutting-file/block-names.ts';
import { escaped } from '../../../engine/cutting-file/escaped.ts';

/** The escapes of the published reference of the format, from memory, undone. */
const undone = (text: string): string =>
  text
    .replaceAll(/\\U\+([0-9A-F]{4})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    .replaceAll(/\^(.)/g, (_, letter: string) =>
      letter === ' ' ? '^' : String.fromCharCode(letter.charCodeAt(0) - 0x40),
    )
    .replaceAll('%%%', '%');

describe('text in a cutting file', () => {
  it.each([
    ['plain', 'plain'],
    ['50 %', '50 %'],
    ['20 %%d', '20 %%%%%%d'],
    ['a\r\n0\nEOF', 'a^M^J0^JEOF'],
    ['x^J', 'x^ J'],
    ['é', '\\U+00E9'],
    ['\\U+0041', '\\U+005CU+0041'],
    ['🪡', '\\U+D83E\\U+DEA1'],
    ['\u0000\u007f', '^@\\U+007F'],
  ])('%j is written %j', (text, file) => {
    expect(escaped(text)).toBe(file);
  });

  it.each(['Ду\tня', '%%% ^^ \\M+1', '"quoted" \u2028 縫', 'a'.repeat(255)])(
    '%j is one line of ASCII, and comes back whole',
    (text) => {
      expect(escaped(text)).toMatch(/^[ -~]*$/);
      expect(undone(escaped(text))).toBe(text);
    },
  );

  it('is cut off after a whole character where R12 takes no more', () => {
    expect(escaped('é'.repeat(100))).toBe('\\U+00E9'.repeat(36));
    expect(escaped('%'.repeat(300)).length).toBeLessThanOrEqual(255);
  });
});

describe('names of blocks', () => {
  const name = (piece: string, number: number, size?: string) => ({ piece: { name: piece, number }, size });

  it('are the number and the name, after the size', () => {
    expect(blockNames([name('side front', 2), name('side front', 2, '38 C')])).toEqual([
      '2-SIDE-FRONT',
      '38-C_2-SIDE-FRONT',
    ]);
  });

  it('hold no more than R12 allows, and are told apart', () => {
    const names = blockNames([
      name('Schürzenlatz “alt”', 1),
      name('縫', 1),
      name('🪡', 1),
      name('skirt centre front lining of the left side', 12),
      name('skirt centre front lining of the left half', 12),
      name('a', 1, '縫'),
      name('a', 1, '…'),
    ]);
    expect(new Set(names).size).toBe(names.length);
    for (const one of names) expect(one).toMatch(/^[A-Z0-9_-]{1,31}$/);
  });
});
