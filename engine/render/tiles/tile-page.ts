import { boundsMeet } from '../../geometry/bounds.ts';
import { between, moved, point } from '../../geometry/point.ts';
import { type Ink, type InkWords, stroke } from '../ink.ts';
import type { BoundedInk } from '../ink-bounds.ts';
import { textSizes } from '../line-types.ts';
import { crossingMarks, type TileJoin } from './joins.ts';
import type { Page } from './page.ts';
import type { Paper } from './papers.ts';
import { reaches, type Tile } from './tile-grid.ts';

/** White at every edge of a page, where few printers reach, mm; common practice, no source. */
export const margin = 10;

/** Width of the strips for glue, which show what the next tile shows too, mm. */
export const overlap = 10;

/** Beside its cell a page shows the other half of a line that runs on its very edge, mm. */
const bleed = 0.4;

/** Size of a tile's name, mm. */
const nameSize = 8;

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
  const around: readonly Ink[] = [
    ...joins.flatMap((join) => joint(join, tile)),
    {
      kind: 'words',
      text: tile.name,
      at: point(left + 4, top + nameSize + 2),
      size: nameSize,
      bold: true,
      pale: true,
    },
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

/** What one of two joined tiles shows of their join. */
const joint = (join: TileJoin, tile: Tile): readonly Ink[] => [
  stroke('join', join.from, join.to),
  ...crossingMarks(join),
  ...(join.under === tile ? [glueHere(join)] : []),
];

function glueHere({ over, side, from, to }: TileJoin): InkWords {
  const edge = between(from, to, 0.25);
  const middle = moved(edge, side === 'right' ? { x: overlap / 2, y: 0 } : { x: 0, y: overlap / 2 });
  return {
    kind: 'words',
    text: `glue ${over.name} here`,
    at: point(middle.x, middle.y + 0.3 * textSizes.small),
    size: textSizes.small,
    centred: true,
    pale: true,
    ...(side === 'right' && { turnedAbout: middle }),
  };
}
