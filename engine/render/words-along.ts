import { insideStrokes, strokes } from '../finishing/label.ts';
import { distanceToStroke, type Rectangle } from '../finishing/rectangle.ts';
import type { Curve } from '../geometry/curve.ts';
import { edgeLength, pointAlong, reversedEdge } from '../geometry/edge.ts';
import { contains } from '../geometry/inside.ts';
import { point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import type { InkWords } from './ink.ts';
import { textSizes } from './line-types.ts';
import { textWidth } from './text-size.ts';

/** A line with words on it. */
export interface WordedLine {
  readonly curves: readonly Curve[];
  readonly text: string;
  /** Words that matter go on the label where the line has no room for them. */
  readonly matters: boolean;
}

/** How far the words on a line stand off it and everything else, mm. */
const clearance = 0.8;

/** Places tried along the line. */
const tries = 24;

/** Words with the room they take. */
export interface PlacedWords {
  readonly words: InkWords;
  readonly box: Rectangle;
}

/**
 * The words of a line just above it, where they cross nothing, as near to its start as may be; nothing where
 * there is no such place.
 */
export function wordsAlong({ curves, text }: WordedLine, piece: Piece): PlacedWords | undefined {
  const line = { name: text, curves };
  const from = line.curves[0]?.from;
  const to = line.curves.at(-1)?.to;
  if (!from || !to) return undefined;
  const drawn = [...piece.edges.flatMap((edge) => edge.curves.flatMap(strokes)), ...insideStrokes(piece)];
  const size = textSizes.small;
  const width = textWidth(text, size);
  const along = from.x <= to.x ? line : reversedEdge(line);
  const places = Array.from(
    { length: 4 * tries + 1 },
    (_, i) => pointAlong(along, (edgeLength(line) * i) / (4 * tries)).point,
  );
  for (let i = 1; i < tries; i++) {
    const foot = places[4 * i] ?? from;
    const top = Math.min(...places.flatMap(({ x, y }) => (Math.abs(x - foot.x) <= width / 2 ? [y] : [])));
    const middle = point(foot.x, top - clearance - size / 2);
    const box: Rectangle = { middle, width, height: size };
    if (!contains(piece.edges, middle)) continue;
    if (drawn.some((stroke) => distanceToStroke(box, stroke) < 0.9 * clearance)) continue;
    const at = point(middle.x, middle.y + 0.3 * size);
    return { box, words: { kind: 'words', text, at, size, anchored: 'middle' } };
  }
  return undefined;
}
