import { type Point, point } from '../../geometry/point.ts';
import { type Ink, stroke } from '../ink.ts';
import type { Tile } from './tile-grid.ts';

/** A place on the joined sheet that is marked on every tile around it: the marks must meet. */
export interface Crossing {
  readonly at: Point;
  /** Its name within the file: the edge or corner of the cells it stands on. */
  readonly name: string;
  /** The tiles that show it. */
  readonly tiles: readonly Tile[];
}

/**
 * The crossing marks of a sheet: at a quarter and at three quarters of every edge between two printed tiles, away
 * from the corners, where four layers of paper lie.
 */
export function crossingsOf(tiles: readonly Tile[]): readonly Crossing[] {
  const byPlace = new Map(tiles.map((tile) => [`${tile.row}/${tile.column}`, tile]));
  return tiles.flatMap((tile) => {
    const { left, right, top, bottom } = tile.cell;
    const beside = byPlace.get(`${tile.row}/${tile.column + 1}`);
    const below = byPlace.get(`${tile.row + 1}/${tile.column}`);
    return shares.flatMap((share, i) => [
      ...(beside
        ? [
            {
              at: point(right, top + share * (bottom - top)),
              name: nameOf(tile, beside, i),
              tiles: [tile, beside],
            },
          ]
        : []),
      ...(below
        ? [
            {
              at: point(left + share * (right - left), bottom),
              name: nameOf(tile, below, i),
              tiles: [tile, below],
            },
          ]
        : []),
    ]);
  });
}

const shares = [0.12, 0.88] as const;

const nameOf = (a: Tile, b: Tile, index: number): string => `${a.name} ${b.name} ${index + 1}`;

/** Half the length of a crossing mark's strokes and the radius of its circle, mm. */
const reach = 4;
const radius = 2;

/** A crossing mark: a circle with a cross through it. */
export const crossing = ({ name }: Crossing, at: Point): readonly Ink[] => {
  const { x, y } = at;
  return [
    { kind: 'circle', class: 'crossing', middle: at, radius },
    stroke('crossing', point(x - reach, y), point(x + reach, y), { line: name }),
    stroke('crossing', point(x, y - reach), point(x, y + reach), { line: name }),
  ];
};
