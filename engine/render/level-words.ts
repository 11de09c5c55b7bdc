import { insideStrokes, strokes } from '../finishing/label.ts';
import { distanceToStroke, type Rectangle } from '../finishing/rectangle.ts';
import { between, point } from '../geometry/point.ts';
import type { InsideLine, Piece } from '../pattern/piece.ts';
import { element, type Node, words } from './markup.ts';
import { numeral } from './path-data.ts';
import { textWidth } from './text-size.ts';

/** Font size of the words on a level line, and how far they stand off it and everything else, mm. */
const size = 2.8;
const clearance = 0.8;

/** Places tried along the line. */
const tries = 24;

/** Words with the room they take. */
export interface PlacedWords {
  readonly node: Node;
  readonly box: Rectangle;
}

/**
 * The words of a level line just above it, where they cross nothing, as near to its start as may be; nothing where
 * there is no such place.
 */
export function levelWords(line: InsideLine, piece: Piece): PlacedWords | undefined {
  const from = line.curves[0]?.from;
  const to = line.curves.at(-1)?.to;
  if (!from || !to) return undefined;
  const drawn = [...piece.edges.flatMap((edge) => edge.curves.flatMap(strokes)), ...insideStrokes(piece)];
  const text = wordsOf(line);
  const width = textWidth(text, size);
  const [left, right] = from.x <= to.x ? [from, to] : [to, from];
  const rise = (Math.abs(right.y - left.y) / (right.x - left.x)) * (width / 2);
  for (let i = 1; i < tries; i++) {
    const foot = between(left, right, i / tries);
    const middle = point(foot.x, foot.y - rise - clearance - size / 2);
    const box: Rectangle = { middle, width, height: size };
    if (drawn.some((stroke) => distanceToStroke(box, stroke) < 0.9 * clearance)) continue;
    const at = { x: numeral(middle.x), y: numeral(middle.y + 0.3 * size), 'text-anchor': 'middle' };
    return { box, node: element('text', { class: 'label small', ...at }, words(text)) };
  }
  return undefined;
}

/** What a level line says: its words, or else its name. */
export const wordsOf = (line: InsideLine): string => line.text ?? line.name;
