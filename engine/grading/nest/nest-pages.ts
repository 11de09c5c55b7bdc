import type { Bounds } from '../../geometry/bounds.ts';
import { type Point, point } from '../../geometry/point.ts';
import { scaledFrom, type Transform, transformedCurve } from '../../geometry/transform.ts';
import type { Vector } from '../../geometry/vector.ts';
import type { Ink } from '../../render/ink.ts';
import { type BoundedInk, bounded } from '../../render/ink-bounds.ts';
import { textSizes } from '../../render/line-types.ts';
import { testSquares, testSquaresSize } from '../../render/test-squares.ts';
import { joinsOf } from '../../render/tiles/joins.ts';
import type { Paper } from '../../render/tiles/papers.ts';
import { type Tile, tilesOf } from '../../render/tiles/tile-grid.ts';
import { cellOn, margin, tilePage } from '../../render/tiles/tile-page.ts';
import { isOfSize, type NestInk, type NestPaper } from './nest-ink.ts';

/** One page with nests on it, 1:1, mm from its top left corner. */
export interface NestPage {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly NestPart[];
}

/** What is drawn on a page: shifted to its place there, and cut off outside `clip`. */
export interface NestPart {
  readonly ink: readonly NestInk[];
  readonly shift: Vector;
  readonly clip?: Bounds | undefined;
}

/** Pages that show the same sizes, which a viewer can switch on and off on all of them. */
export interface NestBook extends Pick<NestPaper, 'along' | 'sizes'> {
  readonly pages: readonly NestPage[];
}

/** A paper of nests as it is, on one large page. */
export const onOnePage = ({ along, sizes, width, height, groups }: NestPaper): NestBook => ({
  along,
  sizes,
  pages: [{ width, height, parts: [{ ink: groups.flatMap(({ ink }) => ink), shift: { x: 0, y: 0 } }] }],
});

/**
 * A paper of nests cut into tiles to be printed at 1:1 and joined, behind a page that shows which tile lies where. Tiles
 * without any line of the sizes that are shown are left out.
 */
export function inTiles({ title, along, sizes, width, height, groups }: NestPaper, paper: Paper): NestBook {
  const cell = cellOn(paper);
  const grid = { columns: Math.ceil(width / cell.width), rows: Math.ceil(height / cell.height) };
  // The squares to measure by stand on the first page.
  const all = groups.filter(({ isScale }) => !isScale).flatMap(({ ink }) => ink);
  const inks = new Map(all.map((ink) => [asPlain(ink), ink] as const));
  const drawn: readonly BoundedInk[] = bounded([...inks.keys()]);
  const tiles = tilesOf(drawn, cell, grid);
  const joins = joinsOf(tiles, drawn);
  const pages = tiles.map((tile, i): NestPage => {
    const own = joins.filter(({ under, over }) => under === tile || over === tile);
    const footer = `${title}, tile ${tile.name}, page ${i + 2} of ${tiles.length + 1}`;
    const page = tilePage(tile, drawn, paper, own, footer);
    const parts = page.parts.map(({ ink, shift, clip }) => ({
      ink: ink.map((one) => inks.get(one) ?? one),
      shift,
      clip,
    }));
    return { width: page.width, height: page.height, parts };
  });
  return { along, sizes, pages: [mapOf(title, all, tiles, paper), ...pages] };
}

/** What belongs to a size, as ink like all other, to see where it lies. */
function asPlain(ink: NestInk): Ink {
  if (!isOfSize(ink)) return ink;
  if (ink.kind === 'key name') return ink.words;
  if (ink.kind !== 'size name')
    return { kind: 'chain', class: 'outline', curves: ink.curves, ...(ink.closed && { closed: ink.closed }) };
  return { kind: 'words', text: ink.size, size: textSizes.small, at: ink.at, anchored: 'middle' };
}

/** Room for the title and for what to do, and between the map and the test squares, mm. */
const head = 22;
const gap = 10;

/** The first page: all nests small, and over them where each tile lies. */
function mapOf(title: string, all: readonly NestInk[], tiles: readonly Tile[], paper: Paper): NestPage {
  const cells = tiles.map(({ cell }) => cell);
  const [right, bottom] = [Math.max(...cells.map((c) => c.right)), Math.max(...cells.map((c) => c.bottom))];
  const height = Math.min(paper.height, 297);
  const room = {
    width: paper.width - 2 * margin,
    height: height - 2 * margin - head - testSquaresSize.height - gap,
  };
  const scale = Math.min(room.width / right, room.height / bottom, 1);
  const larger = scaledFrom(point(0, 0), scale);
  const put: Transform = (p) => {
    const { x, y } = larger(p);
    return point(x + margin, y + margin + head);
  };
  const outlines = all.filter((ink) => isOfSize(ink) && ink.kind === 'outline');
  const said = (text: string, at: Point, size: number, bold = false): Ink => ({
    ...{ kind: 'words', text, at, size, bold },
  });
  return {
    width: paper.width,
    height,
    parts: [
      {
        shift: { x: 0, y: 0 },
        ink: [
          said(title, point(margin, margin + 5), 4, true),
          said(
            'Print at 100 %, measure the squares, then lay the tiles out like this.',
            point(margin, margin + 11),
            textSizes.small,
          ),
          said(
            'Cut each along the dotted lines on its left and at its top, and glue it onto the strip of the tile before it.',
            point(margin, margin + 15),
            textSizes.small,
          ),
          ...testSquares(point(margin, margin + head + bottom * scale + gap)),
          ...outlines.flatMap((ink): readonly NestInk[] =>
            'curves' in ink
              ? [{ ...ink, curves: ink.curves.map((curve) => transformedCurve(curve, put)) }]
              : [],
          ),
          ...tiles.flatMap(({ name, cell }): readonly Ink[] => {
            const [corner, low] = [put(point(cell.left, cell.top)), put(point(cell.right, cell.bottom))];
            const box = { width: low.x - corner.x, height: low.y - corner.y };
            const size = Math.min(4, box.height / 3, box.width / 4);
            const middle = point(corner.x + box.width / 2, corner.y + box.height / 2 + size / 3);
            return [
              { kind: 'box', class: 'square', corner, ...box },
              { kind: 'words', text: name, at: middle, size, anchored: 'middle' },
            ];
          }),
        ],
      },
    ],
  };
}
