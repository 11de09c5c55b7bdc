import { FILE } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import { squares } from '../render/test-squares.ts';
import { fixedMm } from '../text/figure.ts';
import type { FoundElement } from './read-markup.ts';

/**
 * What is wrong with the squares of a sheet as they are drawn; `scale` is the mm of one unit of the drawing. They alone tell
 * whoever prints it whether a millimetre is a millimetre.
 */
export function squareFaults(elements: readonly FoundElement[], scale: number): readonly Issue[] {
  const found = elements.filter(({ name, attributes }) => name === 'rect' && attributes.class === 'square');
  return squares.flatMap(({ side, text }, i): readonly Issue[] => {
    const drawn = found[i]?.attributes;
    if (!drawn) return [fault(`The test square of ${text} is missing.`)];
    const sizes = [drawn.width, drawn.height].map((size) => Number(size) * scale);
    const off = sizes.find((size) => !(Math.abs(size - side) <= FILE));
    if (off === undefined) return [];
    const message = `The test square of ${text} measures ${fixedMm(off, 2)} on this paper: the page is not drawn at 1:1.`;
    return [{ ...fault(message), value: off, limits: { min: side - FILE, max: side + FILE, unit: 'mm' } }];
  });
}

const fault = (message: string): Issue => ({
  code: 'test-square-wrong',
  severity: 'error',
  path: 'file',
  message,
});
