import { type Point, point } from '../geometry/point.ts';
import { FILE } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { Ink } from './ink.ts';
import type { Size } from './layout.ts';
import { textSizes } from './line-types.ts';
import type { Found } from './read-markup.ts';

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

/**
 * What is wrong with the squares of a sheet as they are drawn; `scale` is the mm of one unit of the drawing. They alone tell
 * whoever prints it whether a millimetre is a millimetre.
 */
export function squareFaults(elements: readonly Found[], scale: number): readonly Issue[] {
  const found = elements.filter(({ name, attributes }) => name === 'rect' && attributes.class === 'square');
  return squares.flatMap(({ side, text }, i): readonly Issue[] => {
    const drawn = found[i]?.attributes;
    if (!drawn) return [fault(`The test square of ${text} is missing.`)];
    const sizes = [drawn.width, drawn.height].map((size) => Number(size) * scale);
    const off = sizes.find((size) => !(Math.abs(size - side) <= FILE));
    if (off === undefined) return [];
    const message = `The test square of ${text} measures ${off.toFixed(2)} mm on this paper: the page is not drawn at 1:1.`;
    return [{ ...fault(message), value: off, limits: { min: side - FILE, max: side + FILE, unit: 'mm' } }];
  });
}

const fault = (message: string): Issue => ({
  code: 'test-square-wrong',
  severity: 'error',
  path: 'file',
  message,
});

/** Both squares, with their top left corner here. */
export function testSquares({ x, y }: Point): readonly Ink[] {
  let left = x;
  const drawn = squares.flatMap(({ side, text }): readonly Ink[] => {
    const middle = point(left + side / 2, y + side / 2 + 1.2);
    const corner = point(left, y);
    left += side + gap;
    return [
      { kind: 'box', class: 'square', corner, width: side, height: side },
      { kind: 'words', text, at: middle, size: textSizes.plain, centred: true },
    ];
  });
  const note = 'Print at 100 %. Measure both squares first.';
  const below = point(x, y + testSquaresSize.height - 1);
  return [...drawn, { kind: 'words', text: note, at: below, size: textSizes.small }];
}
