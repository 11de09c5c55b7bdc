import { boundsMeet } from '../../geometry/bounds.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { Ink } from '../ink.ts';
import { stroke } from '../ink.ts';
import { textSizes } from '../line-types.ts';
import { type Crossing, crossing } from './crossings.ts';
import type { BoundedInk } from './ink-bounds.ts';
import { onPage, type Page } from './page.ts';
import type { Paper } from './papers.ts';
import type { Tile } from './tile-grid.ts';

/** White at every edge of a page, where few printers reach, mm; common practice, no source. */
export const margin = 10;

/** How far a page shows what the next ones to its right and below show too, for glue, mm. */
export const overlap = 10;

/** A line beside the window may show in it by half its width, mm. */
const bleed = 1;

/** A tile as it is printed: its window on the sheet, its name, its edges to cut and glue, and crossing marks. */
export function tilePage(
  tile: Tile,
  drawn: readonly BoundedInk[],
  paper: Paper,
  footer: string,
  neighbours: Neighbours,
  crossings: readonly Crossing[],
): Page {
  const { left, top, right, bottom } = tile.cell;
  const shift = { x: margin - left, y: margin - top };
  const cell = { left: margin, top: margin, right: right + shift.x, bottom: bottom + shift.y };
  const clip = { ...cell, right: cell.right + overlap, bottom: cell.bottom + overlap };
  const window = { left: left - bleed, top: top - bleed, right: right + overlap, bottom: bottom + overlap };
  const shown = drawn.flatMap(({ ink, bounds }) => (boundsMeet(bounds, window) ? [ink] : []));
  const marks = crossings.flatMap((found) =>
    crossing(found, point(found.at.x + shift.x, found.at.y + shift.y)),
  );
  return {
    width: paper.width,
    height: paper.height,
    parts: [
      onPage(joins(cell, neighbours)),
      { ink: shown, clip, shift },
      onPage([...marks, ...named(tile, cell, footer)]),
    ],
  };
}

/** The names of the tiles beside this one, where they are printed. */
export interface Neighbours {
  readonly left?: string | undefined;
  readonly above?: string | undefined;
  readonly right?: string | undefined;
  readonly below?: string | undefined;
}

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The edges along which tiles are cut or laid, and words on each strip for glue. */
function joins({ left, top, right, bottom }: Frame, next: Neighbours): readonly Ink[] {
  const corners = {
    nw: point(left, top),
    ne: point(right, top),
    sw: point(left, bottom),
    se: point(right, bottom),
  };
  const edge = (is: string | undefined, from: Point, to: Point): readonly Ink[] =>
    is === undefined ? [] : [stroke('join', from, to)];
  return [
    ...edge(next.left, corners.nw, corners.sw),
    ...edge(next.above, corners.nw, corners.ne),
    ...edge(next.right, corners.ne, corners.se),
    ...edge(next.below, corners.sw, corners.se),
    ...glue(next.below, point((3 * left + right) / 4, bottom + overlap / 2), false),
    ...glue(next.right, point(right + overlap / 2, (3 * top + bottom) / 4), true),
  ];
}

function glue(name: string | undefined, middle: Point, upwards: boolean): readonly Ink[] {
  if (name === undefined) return [];
  const at = point(middle.x, middle.y + 0.3 * textSizes.small);
  const turned = upwards ? { turnedAbout: middle } : {};
  return [
    {
      kind: 'words',
      text: `glue ${name} here`,
      at,
      size: textSizes.small,
      centred: true,
      pale: true,
      ...turned,
    },
  ];
}

/** The tile's name, pale in its top left corner and again in the footer. */
function named(tile: Tile, { left, top, bottom }: Frame, footer: string): readonly Ink[] {
  return [
    { kind: 'words', text: tile.name, at: point(left + 4, top + 10), size: nameSize, bold: true, pale: true },
    {
      kind: 'words',
      text: footer,
      at: point(left, bottom + overlap + 4.5),
      size: textSizes.small,
      pale: true,
    },
  ];
}

const nameSize = 8;
