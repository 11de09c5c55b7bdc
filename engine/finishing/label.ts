import type { Curve, Outline } from '../geometry/curve.ts';
import { contains } from '../geometry/inside.ts';
import { outlineCurves } from '../geometry/outline.ts';
import { moved, type Point, point } from '../geometry/point.ts';
import { polygonOf } from '../geometry/polygon.ts';
import { heading, outward, scaled } from '../geometry/vector.ts';
import type { Piece } from '../pattern/piece.ts';
import { chordsOf, type Stroke } from './chords.ts';
import { distanceToStroke, leastDistanceToStroke, type Rectangle } from './rectangle.ts';
import { type InsideSpan, liesIn, spansAt } from './spans.ts';

/** Where a piece's label goes: the middle of its block of text, and whether that is turned to read sideways. */
export interface LabelPlace {
  readonly middle: Point;
  /** Degrees. */
  readonly rotation: 0 | 90;
  /** As the block lies on the piece, after turning, mm. */
  readonly width: number;
  readonly height: number;
}

/**
 * Finds a place for a block of text inside a piece, clear by at least `clearance` (mm) of its stitching line,
 * inside lines, marks and grainline. Of all places on a grid the one farthest from everything is taken and
 * then bettered by ever smaller steps, upright if there is room, else turned a quarter. Undefined when there
 * is no room either way. The same piece always gives the same place.
 *
 * Curves count as chains of chords, which stray from them by less than 0.1 mm.
 */
export function labelPlace(
  piece: Labelled,
  size: { readonly width: number; readonly height: number },
  clearance: number,
): LabelPlace | undefined {
  const drawn = [...outlineCurves(piece.edges).flatMap(strokes), ...insideStrokes(piece)];
  for (const rotation of [0, 90] as const) {
    const [width, height] = rotation === 0 ? [size.width, size.height] : [size.height, size.width];
    const best = roomiest(piece.edges, drawn, { width, height }, clearance);
    if (best && best.room >= clearance) return { middle: best.middle, rotation, width, height };
  }
  return undefined;
}

/** What a label has to keep clear of: of a whole piece, or of what is drawn of one elsewhere. */
type Labelled = Pick<Piece, 'lines' | 'marks' | 'grain'> & { readonly edges: Outline };

/** Everything drawn inside a piece as straight strokes: inside lines, grainline, marks. */
export const insideStrokes = (piece: Labelled): Stroke[] => [
  ...piece.lines.flatMap((inside) => inside.curves.flatMap(strokes)),
  piece.grain,
  ...piece.marks.flatMap(({ kind, at, angle, length }): readonly Stroke[] => {
    const half = scaled(heading(angle), length / 2);
    const arms = kind === 'cross' ? [half, outward(half)] : [half];
    return arms.map((arm) => ({ from: moved(at, scaled(arm, -1)), to: moved(at, arm) }));
  }),
];

/** Chords this near a curve are near enough where only its neighbourhood matters, mm. */
const ROUGHLY = 0.1;

/** A curve as straight strokes that stay within 0.1 mm of it. */
export const strokes = (curve: Curve): Stroke[] => chordsOf(curve, ROUGHLY);

interface LabelSpot {
  readonly middle: Point;
  readonly room: number;
}

/** Grid steps across the smaller side of the label, and how often the step is halved once the best is found. */
const STEPS_ACROSS = 3;
const HALVINGS = 6;

/** More than the chords of an outline stray from it, on both sides of a block, mm. */
const ASTRAY = 4 * ROUGHLY;

/**
 * The place with most room round a block of a size, as far as it matters: where there are only places with less than
 * `clearance`, it may be none. Who moves by some distance gains no more room than that, so places that cannot be better
 * than the best so far are passed over, and what is left out changes nothing of the answer.
 */
function roomiest(
  outline: Outline,
  drawn: readonly Stroke[],
  { width, height }: { readonly width: number; readonly height: number },
  clearance: number,
): LabelSpot | undefined {
  const corners = polygonOf(outline, ROUGHLY);
  const left = Math.min(...corners.map(({ x }) => x)) + width / 2;
  const right = Math.max(...corners.map(({ x }) => x)) - width / 2;
  const top = Math.min(...corners.map(({ y }) => y)) + height / 2;
  const bottom = Math.max(...corners.map(({ y }) => y)) - height / 2;
  const grid = Math.min(width, height) / STEPS_ACROSS;

  let best: LabelSpot | undefined;
  // The halved steps go no farther than one step of the grid along each axis.
  let beaten = Math.max(0, clearance - Math.SQRT2 * grid);
  let inTheWay: Stroke | undefined;
  /** Tries a place, and tells how far along to go on: nearer to it there is nothing better. */
  const consider = (middle: Point): number => {
    const rectangle = { middle, width, height };
    // What was in the way of the last place mostly is in the way of the next.
    const known = inTheWay ? distanceToStroke(rectangle, inTheWay) : Number.POSITIVE_INFINITY;
    if (known <= beaten) return beaten - known;
    const { room, nearest } = roomAround(rectangle, drawn, beaten);
    inTheWay = nearest;
    if (room <= beaten) return beaten - room;
    if (!contains(outline, middle)) return 0;
    best = { middle, room };
    beaten = room;
    return 0;
  };
  // A block has room only where both its middle lines lie inside the outline.
  const columns = new Map<number, readonly InsideSpan[]>();
  const downAt = (x: number): readonly InsideSpan[] => {
    const known = columns.get(x) ?? spansAt(corners, 'x', x);
    columns.set(x, known);
    return known;
  };
  for (let y = top; y <= bottom; y += grid) {
    const across = spansAt(corners, 'y', y);
    if (!across.some(([from, to]) => to - from > width - ASTRAY)) continue;
    for (let x = left; x <= right; ) {
      const mayFit = liesIn(across, x, width, ASTRAY) && liesIn(downAt(x), y, height, ASTRAY);
      const idle = mayFit ? consider(point(x, y)) : 0;
      x += grid * Math.max(1, Math.floor(idle / grid));
    }
  }
  let step = grid / 2;
  for (let i = 0; i < HALVINGS && best; i++, step /= 2) {
    const { x, y } = best.middle;
    for (const dy of [-step, 0, step]) {
      for (const dx of [-step, 0, step]) consider(point(x + dx, y + dy));
    }
  }
  return best;
}

/** Distance from a rectangle to the nearest stroke; gives up at the first that is no farther than `beaten`. */
function roomAround(
  rectangle: Rectangle,
  drawn: readonly Stroke[],
  beaten: number,
): { readonly room: number; readonly nearest: Stroke | undefined } {
  let room = Number.POSITIVE_INFINITY;
  let nearest: Stroke | undefined;
  for (const stroke of drawn) {
    if (leastDistanceToStroke(rectangle, stroke) >= room) continue;
    const distance = distanceToStroke(rectangle, stroke);
    if (distance >= room) continue;
    [room, nearest] = [distance, stroke];
    if (room <= beaten) break;
  }
  return { room, nearest };
}
