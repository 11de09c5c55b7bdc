import type { Point } from '../geometry/point.ts';
import type { Size } from './layout.ts';
import { element, type Node, words } from './markup.ts';
import { numeral } from './path-data.ts';

/** The squares to lay a ruler on before anything is cut: 50 mm and 2 in. */
const squares = [
  { side: 50, text: '50 mm' },
  { side: 50.8, text: '2 in' },
] as const;

/** Distance between the squares, and room for the words below, mm. */
const gap = 10;
const below = 8;

/** Room that the squares take, mm. */
export const testSquaresSize: Size = { width: 50 + gap + 50.8, height: 50.8 + below };

/** Both squares, with their top left corner here. */
export function testSquares({ x, y }: Point): readonly Node[] {
  let left = x;
  const drawn = squares.flatMap(({ side, text }) => {
    const at = { x: numeral(left), y: numeral(y), width: numeral(side), height: numeral(side) };
    const middle = { x: numeral(left + side / 2), y: numeral(y + side / 2 + 1.2), 'text-anchor': 'middle' };
    left += side + gap;
    return [
      element('rect', { class: 'square', ...at }),
      element('text', { class: 'label', ...middle }, words(text)),
    ];
  });
  const hint = { x: numeral(x), y: numeral(y + testSquaresSize.height - 1) };
  const note = 'Print at 100 %. Measure both squares first.';
  return [...drawn, element('text', { class: 'label small', ...hint }, words(note))];
}
