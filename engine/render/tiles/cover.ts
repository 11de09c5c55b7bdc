import { point } from '../../geometry/point.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { Ink } from '../ink.ts';
import { lineKey } from '../key.ts';
import { cutWords } from '../label-words.ts';
import type { Size } from '../layout.ts';
import { textSizes } from '../line-types.ts';
import { testSquares, testSquaresSize } from '../test-squares.ts';
import { textWidth } from '../text-size.ts';

/** What the cover tells, and how. */
export interface CoverWords {
  readonly title: string;
  readonly below: string;
  /** How to check the scale, and what to do then; a paragraph each, broken into lines. */
  readonly notes: readonly (readonly string[])[];
}

/** Width of the cover, mm: what fits on letter and A4. */
export const coverWidth = 185;

const lineStep = 5;
const paragraphGap = 2.5;
const pieceStep = 9;

/** Where the list of pieces begins, below title, squares, key and notes. */
const listTop = ({ notes }: CoverWords): number =>
  24 +
  testSquaresSize.height +
  6 +
  notes.reduce((sum, lines) => sum + lines.length * lineStep + paragraphGap, 0) +
  6;

/** Room that the cover takes without a map, mm. */
export const coverSize = (garment: Garment, words: CoverWords): Size => ({
  width: coverWidth,
  height: listTop(words) + garment.pieces.length * pieceStep + 4,
});

/**
 * What stands before a pattern, from the page's top left corner: title, test squares, key of lines, notes, and
 * the pieces with how many to cut of each; `depth` mm at most if it can be.
 */
export function cover(
  garment: Garment,
  words: CoverWords,
  depth: number,
): { readonly ink: readonly Ink[]; readonly listTop: number } {
  const top = listTop(words);
  const step = Math.min(pieceStep, (depth - top - 4) / Math.max(1, garment.pieces.length));
  const shrunk = step / pieceStep;
  const said: Ink[] = [];
  let level = 24 + testSquaresSize.height + 10;
  for (const lines of words.notes) {
    for (const [i, text] of lines.entries()) {
      said.push(line(text, 0, level, textSizes.plain, i === 0));
      level += lineStep;
    }
    level += paragraphGap;
  }
  const ink = [
    line(words.title, 0, 8, fitting(words.title, 8), true),
    line(words.below, 0, 15, fitting(words.below, textSizes.plain), false),
    ...testSquares(point(0, 22)),
    ...lineKey(point(testSquaresSize.width + 12, 22)),
    ...said,
    ...garment.pieces.flatMap(({ number, name, cut }, i) => [
      line(`${number} ${name}`, 0, top + i * step + 4 * shrunk, Math.min(4, step * 0.45), true),
      line(
        cut.map(cutWords).join('; '),
        6,
        top + i * step + 8 * shrunk,
        Math.min(textSizes.small, step * 0.4),
        false,
      ),
    ]),
  ];
  return { ink, listTop: top };
}

/** The size in which a text fits the cover's width, no larger than wanted. */
const fitting = (text: string, size: number): number =>
  Math.min(size, (size * coverWidth) / Math.max(1, textWidth(text, size)));

const line = (text: string, x: number, y: number, size: number, bold: boolean): Ink => ({
  kind: 'words',
  text,
  at: point(x, y),
  size,
  ...(bold && { bold }),
});
