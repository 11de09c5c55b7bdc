import { strokes } from '../../finishing/label.ts';
import { distanceToStroke } from '../../finishing/rectangle.ts';
import { type Bounds, boundsMeet, grown } from '../../geometry/bounds.ts';
import { between, type Point, point } from '../../geometry/point.ts';
import { type Ink, stroke } from '../ink.ts';
import type { BoundedInk } from '../ink-bounds.ts';
import type { Tile } from './tile-grid.ts';

/** An edge across which two tiles are glued together. */
export interface TileJoin {
  /** The tile that carries the strip for glue. */
  readonly under: Tile;
  /** The tile that is cut along this edge and laid on top. */
  readonly over: Tile;
  /** Whether `over` lies to the right of `under` or below it. */
  readonly side: 'right' | 'below';
  /** The edge on the joined sheet, from the top or from the left. */
  readonly from: Point;
  readonly to: Point;
  /** Where its crossing marks stand: on no word of the pieces, where the edge has room. */
  readonly marks: readonly Point[];
}

/** The edges between two tiles that a line or a word runs across: elsewhere nothing needs joining. */
export function joinsOf(tiles: readonly Tile[], drawn: readonly BoundedInk[]): readonly TileJoin[] {
  const byPlace = new Map(tiles.map((tile) => [`${tile.row}/${tile.column}`, tile]));
  const words = drawn.filter(({ ink }) => ink.kind === 'words').map(({ bounds }) => bounds);
  return tiles.flatMap((under) => {
    const { left, right, top, bottom } = under.cell;
    const candidates = [
      { over: byPlace.get(`${under.row}/${under.column + 1}`), side: 'right', from: point(right, top) },
      { over: byPlace.get(`${under.row + 1}/${under.column}`), side: 'below', from: point(left, bottom) },
    ] as const;
    const to = point(right, bottom);
    return candidates.flatMap(({ over, side, from }): readonly TileJoin[] =>
      over && drawn.some((ink) => crosses(ink, { left: from.x, top: from.y, right, bottom }))
        ? [{ under, over, side, from, to, marks: marksOn(from, to, words) }]
        : [],
    );
  });
}

function crosses({ ink, bounds }: BoundedInk, edge: Bounds): boolean {
  if (!boundsMeet(bounds, edge)) return false;
  if (ink.kind !== 'chain') return true;
  const middle = point((edge.left + edge.right) / 2, (edge.top + edge.bottom) / 2);
  const line = { middle, width: edge.right - edge.left, height: edge.bottom - edge.top };
  return ink.curves.some((curve) => strokes(curve).some((chord) => distanceToStroke(line, chord) === 0));
}

/** Where the crossing marks of a join stand, as shares of its edge: far apart, but away from the corners. */
const shares = [0.12, 0.88] as const;

/** Half the length of a crossing mark's strokes and the radius of its circle, mm. */
const reach = 4;
const radius = 2;

/** Crossing marks stand this clear of words, and make way along their edge in such steps, to and fro, as shares of it. */
const [clear, steps] = [1, [0, 0.03, -0.03, 0.06, -0.06, 0.09, -0.09, 0.12, 0.15, 0.18, 0.21, 0.24]] as const;

/** The places of the crossing marks of an edge, each as near to its usual one as words allow. */
const marksOn = (from: Point, to: Point, words: readonly Bounds[]): readonly Point[] =>
  shares.map((share) => {
    const inward = share < 0.5 ? 1 : -1;
    const places = steps.map((step) => between(from, to, share + inward * step));
    const isFree = ({ x, y }: Point): boolean => {
      const room = grown({ left: x, right: x, top: y, bottom: y }, reach + clear);
      return !words.some((each) => boundsMeet(each, room));
    };
    return places.find(isFree) ?? between(from, to, share);
  });

/** The crossing marks of a join, on the joined sheet: both tiles show them, and they must meet. */
export const crossingMarks = ({ under, over, marks }: TileJoin): readonly Ink[] =>
  marks.flatMap((at, i) => {
    const names = { line: `${under.name} ${over.name} ${i + 1}` };
    return [
      { kind: 'circle', class: 'crossing', middle: at, radius },
      stroke('crossing', point(at.x - reach, at.y), point(at.x + reach, at.y), names),
      stroke('crossing', point(at.x, at.y - reach), point(at.x, at.y + reach), names),
    ];
  });
