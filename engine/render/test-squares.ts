import { type Point, point } from '../geometry/point.ts';
import type { Ink } from './ink.ts';
import type { Size } from './layout.ts';
import { textSizes } from './line-types.ts';

/** The squares to lay a ruler on before anything is cut: 50 mm and 2 in. */
export const squares = [
  { side: 50, text: '50 mm' },
  { side: 50.8, text: '2 in' },
] as const;

/** Distance between the squares, and room for the words below, mm. */
const gap = 10;
const below = 8;

/** Room that the squares take, mm. */
export const testSquaresSize: Size = { width: 50 + gap + 50.8, height: 50.8 + below };

/** Both squares, with their top left corner here, and below them what to do with them. */
export function testSquares(
  { x, y }: Point,
  note = 'Print at 100 %. Measure both squares first.',
): readonly Ink[] {
  let left = x;
  const drawn = squares.flatMap(({ side, text }): readonly Ink[] => {
    const middle = point(left + side / 2, y + side / 2 + 1.2);
    const corner = point(left, y);
    left += side + gap;
    return [
      { kind: 'box', class: 'square', corner, width: side, height: side },
      { kind: 'words', text, at: middle, size: textSizes.plain, anchored: 'middle' },
    ];
  });
  const below = point(x, y + testSquaresSize.height - 1);
  return [...drawn, { kind: 'words', text: note, at: below, size: textSizes.small }];
}
