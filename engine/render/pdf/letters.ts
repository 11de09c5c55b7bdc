import { printable } from '../markup.ts';
import { notBeside } from './not-beside.ts';

/**
 * Turns words into words that a PDF with some fonts can show: letters that one of them has not, such as Arabic or Chinese ones,
 * are spelled in Latin ones, for a box in place of each would name nobody.
 */
export async function lettersOf(fonts: readonly Uint8Array[]): Promise<(text: string) => string> {
  // Loaded where a PDF is written, as the library that writes it is.
  const [{ create }, { default: spell }] = await Promise.all([
    import('fontkit').catch(notBeside),
    import('any-ascii').catch(notBeside),
  ]);
  // It reads any bytes; its types were written for Node's own.
  const faces = fonts.map((bytes) => create(bytes as Buffer));
  const has = (letter: string): boolean => {
    const code = letter.codePointAt(0) ?? 0;
    return faces.every((face) => 'hasGlyphForCodePoint' in face && face.hasGlyphForCodePoint(code));
  };
  const spelled = (letter: string): string => Array.from(spell(letter)).filter(has).join('');
  return (text) => Array.from(printable(text), (letter) => (has(letter) ? letter : spelled(letter))).join('');
}
