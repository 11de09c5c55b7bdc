import { strokes } from '../../finishing/label.ts';
import { distanceToStroke } from '../../finishing/rectangle.ts';
import { type Bounds, boundsMeet } from '../../geometry/bounds.ts';
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
}

/** The edges between two tiles that a line or a word runs across: elsewhere nothing needs joining. */
export function joinsOf(tiles: readonly Tile[], drawn: readonly BoundedInk[]): readonly TileJoin[] {
  const byPlace = new Map(tiles.map((tile) => [`${tile.row}/${tile.column}`, tile]));
  return tiles.flatMap((under) => {
    const { left, right, top, bottom } = under.cell;
    const candidates = [
      { over: byPlace.get(`${under.row}/${under.column + 1}`), side: 'right', from: point(right, top) },
      { over: byPlace.get(`${under.row + 1}/${under.column}`), side: 'below', from: point(left, bottom) },
    ] as const;
    const to = point(right, bottom);
    return candidates.flatMap(({ over, side, from }): readonly TileJoin[] =>
      over && drawn.some((ink) => crosses(ink, { left: from.x, top: from.y, right, bottom }))
        ? [{ under, over, side, from, to }]
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

/** The crossing marks of a join, on the joined sheet: both tiles show them, and they must meet. */
export const crossingMarks = ({ under, over, from, to }: TileJoin): readonly Ink[] =>
  shares.flatMap((share, i) => {
    const at = between(from, to, share);
    const names = { line: `${under.name} ${over.name} ${i + 1}` };
    return [
      { kind: 'circle', class: 'crossing', middle: at, radius },
      stroke('crossing', point(at.x - reach, at.y), point(at.x + reach, at.y), names),
      stroke('crossing', point(at.x, at.y - reach), point(at.x, at.y + reach), names),
    ];
  });
