import { boundsMeet, grown } from '../../geometry/bounds.ts';
import { between, moved, type Point, point } from '../../geometry/point.ts';
import { type Ink, type InkWords, stroke } from '../ink.ts';
import { type BoundedInk, bounded, inkBounds } from '../ink-bounds.ts';
import type { Size } from '../layout.ts';
import { textSizes } from '../line-types.ts';
import { crossingMarks, type TileJoin } from './joins.ts';
import type { Page } from './page.ts';
import type { Paper } from './papers.ts';
import { reaches, type Tile } from './tile-grid.ts';

/** White at every edge of a page, where few printers reach, mm; common practice, no source. */
export const margin = 10;

/** Width of the strips for glue, which show what the next tile shows too, mm. */
export const overlap = 10;

/** What of the joined sheet only one page of a paper shows; it lies `margin` from its left and its upper edge. */
export const cellOn = ({ width, height }: Size): Size => ({
  width: width - 2 * margin - overlap,
  height: height - 2 * margin - overlap,
});

/** Beside its cell a page shows the other half of a line that runs on its very edge, mm. */
const bleed = 0.4;

/** Sizes of a tile's name, mm, the one it has where there is room first. */
const nameSizes = [8, 5, 3.5] as const;

/** A name stands so far from the left edge of its tile, so clear of what else is drawn, and is tried in such steps, mm. */
const [nameBeside, nameClear, nameStep] = [4, 1, 6];

/**
 * A tile as it is printed: its share of the joined sheet with a strip more to the right and below where a tile is
 * glued on, the edges to cut and to lay on, crossing marks, its name, and `footer` at the foot of the page.
 */
export function tilePage(
  tile: Tile,
  drawn: readonly BoundedInk[],
  paper: Paper,
  joins: readonly TileJoin[],
  footer: string,
): Page {
  const { left, top, right, bottom } = tile.cell;
  const strip = (side: TileJoin['side']): number =>
    joins.some((join) => join.under === tile && join.side === side) ? overlap : bleed;
  const window = {
    left: left - bleed,
    top: top - bleed,
    right: right + strip('right'),
    bottom: bottom + strip('below'),
  };
  const shift = { x: margin - left, y: margin - top };
  const clip = {
    left: window.left + shift.x,
    top: window.top + shift.y,
    right: window.right + shift.x,
    bottom: window.bottom + shift.y,
  };
  const shown = drawn.flatMap(({ ink, bounds }) =>
    boundsMeet(bounds, window) && reaches(ink, window) ? [ink] : [],
  );
  const marked = joins.flatMap((join) => [stroke('join', join.from, join.to), ...crossingMarks(join)]);
  const covered = bounded([...shown, ...marked]);
  const glued = joins.filter(({ under }) => under === tile).map((join) => glueHere(join, covered));
  const joints = [...marked, ...glued];
  const around: readonly Ink[] = [
    ...joints,
    nameOf(tile, [...shown, ...joints]),
    {
      kind: 'words',
      text: footer,
      at: point(left, bottom + overlap + 4.5),
      size: textSizes.small,
      pale: true,
    },
  ];
  const { width, height } = paper;
  return {
    width,
    height,
    parts: [
      { ink: around, shift },
      { ink: shown, clip, shift },
    ],
  };
}

/** A tile's name where it lies on nothing that the page shows, as near to the upper left as can be; smaller where it must. */
function nameOf({ name, cell }: Tile, shown: readonly Ink[]): InkWords {
  const drawn = bounded(shown);
  const words = (x: number, y: number, size: number): InkWords => ({
    kind: 'words',
    text: name,
    at: point(x, y),
    size,
    bold: true,
    pale: true,
  });
  for (const size of nameSizes)
    for (const { x, y } of placesIn(cell, size)) {
      const placed = words(x, y, size);
      const room = grown(inkBounds(placed), nameClear);
      if (room.right > cell.right) continue;
      if (!drawn.some(({ ink, bounds }) => boundsMeet(bounds, room) && reaches(ink, room))) return placed;
    }
  return words(cell.left + nameBeside, cell.top + nameSizes[0] + 2, nameSizes[0]);
}

/** Where words of a size may begin in a cell, the nearest to its upper left corner first. */
function placesIn({ left, top, right, bottom }: Tile['cell'], size: number): readonly Point[] {
  const places: Point[] = [];
  for (let y = top + size + 2; y < bottom - 2; y += nameStep)
    for (let x = left + nameBeside; x < right - size; x += nameStep) places.push(point(x, y));
  const away = ({ x, y }: Point): number => x - left + (y - top);
  return places.toSorted((a, b) => away(a) - away(b));
}

/** Where along an edge its strip may say what is glued on it, as shares of the edge, the first that is free. */
const glueShares = [
  0.25, 0.75, 0.35, 0.65, 0.5, 0.3, 0.7, 0.4, 0.6, 0.45, 0.55, 0.2, 0.8, 0.94, 0.06,
] as const;

/** What the strip of a join says, on nothing that is drawn there; where it is full, on no word; else at the first place. */
function glueHere(join: TileJoin, covered: readonly BoundedInk[]): InkWords {
  const places = glueShares.map((share) => glueAt(join, share));
  const isFree = (words: InkWords, drawn: readonly BoundedInk[]): boolean => {
    const room = grown(inkBounds(words), nameClear / 2);
    return !drawn.some(({ ink, bounds }) => boundsMeet(bounds, room) && reaches(ink, room));
  };
  const otherWords = covered.filter(({ ink }) => ink.kind === 'words');
  return (
    places.find((words) => isFree(words, covered)) ??
    places.find((words) => isFree(words, otherWords)) ??
    glueAt(join, glueShares[0])
  );
}

function glueAt({ over, side, from, to }: TileJoin, share: number): InkWords {
  const edge = between(from, to, share);
  const middle = moved(edge, side === 'right' ? { x: overlap / 2, y: 0 } : { x: 0, y: overlap / 2 });
  return {
    kind: 'words',
    text: `glue ${over.name} here`,
    at: point(middle.x, middle.y + 0.3 * textSizes.small),
    size: textSizes.small,
    anchored: 'middle',
    pale: true,
    ...(side === 'right' && { turnedAbout: middle }),
  };
}
