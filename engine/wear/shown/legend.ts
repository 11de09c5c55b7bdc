import { element, type Node, words } from '../../render/markup.ts';
import type { WornMap } from './maps.ts';

/** Room for a legend under a picture, and its parts, mm. */
export const LEGEND = 74;
const [LINE, BOX, LETTER, CLEAR] = [20, 13, 12, 8];

/** Letters of a legend, and of the names of levels. */
export const lettering = { 'font-family': 'sans-serif', 'font-size': String(LETTER), fill: '#111' };

/** What the colours of a map mean, in two rows from the left end of what it is drawn under. */
export function legendOf({ title, steps }: WornMap, left: number, under: number, width: number): Node {
  const top = under + CLEAR;
  const text = (x: number, y: number, said: string): Node =>
    element('text', { x: String(x), y: String(y) }, words(said));
  const columns = Math.ceil(steps.length / 2);
  return element('g', lettering, [
    text(left, top + LETTER, title),
    ...steps.flatMap(({ colour, says }, i) => {
      const x = left + Math.round(((i % columns) * width) / columns);
      const y = top + LINE * (1 + Math.floor(i / columns));
      const box = {
        x: String(x),
        y: String(y),
        width: String(BOX),
        height: String(BOX),
        fill: colour,
        stroke: '#111',
      };
      return [element('rect', { ...box, 'stroke-width': '0.5' }), text(x + BOX + 5, y + LETTER - 1, says)];
    }),
  ]);
}
