import anyAscii from 'any-ascii';
import { printable } from '../markup.ts';

/** Tells of a letter whether all of some fonts have it. */
export async function lettersOf(fonts: readonly Uint8Array[]): Promise<(letter: string) => boolean> {
  // Loaded where a PDF is written, as the library that writes it is.
  const { create } = await import('fontkit');
  // It reads any bytes; its types were written for Node's own.
  const faces = fonts.map((bytes) => create(bytes as Buffer));
  return (letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return faces.every((face) => 'hasGlyphForCodePoint' in face && face.hasGlyphForCodePoint(code));
  };
}

/**
 * Words as a PDF can show them: letters that its font has not, such as Arabic or Chinese ones, are spelled in Latin ones,
 * for a box in place of each would name nobody. `has` tells whether the font has a letter.
 */
export const inLetters = (text: string, has: (letter: string) => boolean): string =>
  Array.from(printable(text), (letter) => (has(letter) ? letter : spelled(letter, has))).join('');

const spelled = (letter: string, has: (letter: string) => boolean): string =>
  Array.from(anyAscii(letter)).filter(has).join('');
