import { insideStrokes, strokes } from '../finishing/label.ts';
import { distanceToStroke, type Rectangle } from '../finishing/rectangle.ts';
import { between } from '../geometry/point.ts';
import type { InsideLine, Piece } from '../pattern/piece.ts';
import { element, type Node, words } from './markup.ts';
import { numeral } from './path-data.ts';
import { textWidth } from './text-size.ts';

/** Font size of the words on a level line, and how far they stand off it and everything else, mm. */
const size = 2.8;
const clearance = 0.8;

/** Places tried along the line. */
const tries = 24;

/** The words of a level line just above it, where they cross nothing, as near to its start as may be. */
export function levelWords(line: InsideLine, piece: Piece): Node {
  const from = line.curves[0]?.from;
  const to = line.curves.at(-1)?.to;
  const text = line.text ?? line.name;
  if (!from || !to) return element('g');
  const [left, right] = from.x <= to.x ? [from, to] : [to, from];
  const drawn = [...piece.edges.flatMap((edge) => edge.curves.flatMap(strokes)), ...insideStrokes(piece)];
  const width = textWidth(text, size);
  for (let i = 1; i < tries; i++) {
    const { x, y } = between(left, right, i / tries);
    const box: Rectangle = { middle: { x, y: y - clearance - size / 2 }, width, height: size };
    if (drawn.some((stroke) => distanceToStroke(box, stroke) < clearance * 0.99)) continue;
    const at = { x: numeral(x), y: numeral(y - clearance - size * 0.2), 'text-anchor': 'middle' };
    return element('text', { class: 'label small', ...at }, words(text));
  }
  return element('g');
}
