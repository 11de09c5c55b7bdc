import anyAscii from 'any-ascii';
import { printable } from '../markup.ts';

/** Letters of scripts that the embedded font has, and signs of all; pictures among them it has not. */
const drawn =
  /^(?:[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Inherited}]|(?!\p{Extended_Pictographic})\p{Script=Common})$/u;

/**
 * Words as a PDF can show them: letters of other scripts, such as Arabic or Chinese, are spelled in Latin ones, for a box
 * in place of each would name nobody.
 */
export const inLetters = (text: string): string =>
  Array.from(printable(text), (letter) => (drawn.test(letter) ? letter : anyAscii(letter))).join('');
