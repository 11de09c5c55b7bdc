import type { Stroke } from '../../finishing/chords.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { Size } from '../layout.ts';
import { type PixelSize, type Silhouette, silhouette } from './silhouette.ts';
import { Table } from './table.ts';

/** Something to place: its closed outline, from its own top left corner, one for each way it may lie. */
export interface Shape {
  readonly outlines: readonly (readonly Stroke[])[];
}

/** Where a shape came to lie: its top left corner, and which of its outlines lies there. */
export interface Place {
  readonly corner: Point;
  readonly way: number;
}

export interface Placing {
  readonly places: readonly Place[];
  readonly columns: number;
  readonly rows: number;
  /** Pages with a line on them. */
  readonly pages: number;
}

/** Distance kept from the edge of a page unless a line must cross it; twice that between two shapes, mm. */
const border = 3;

/** About the size of a pixel: small beside a piece, large enough to be quick; mm. */
const roughPixel = 10;

/**
 * Places shapes on a field of pages joined edge to edge (each a `cell`, mm), so that lines fall on few pages. The
 * largest shape first, each goes where it takes the fewest new pages, then the fewest pages at all, then highest,
 * then leftmost (a bottom-left rule: B. S. Baker, E. G. Coffman, R. L. Rivest, 1980, on pixels). Tried for
 * fields of one to `most` columns and two orders of the shapes; the best is kept. No more than `rows` rows are
 * used. Undefined when there is no room.
 */
export function placeShapes(
  shapes: readonly Shape[],
  cell: Size,
  most: { readonly columns: number; readonly rows: number },
): Placing | undefined {
  const across = Math.round(cell.width / roughPixel);
  const down = Math.round(cell.height / roughPixel);
  const pixel = { width: cell.width / across, height: cell.height / down };
  const solid = shapes.map(({ outlines }) => outlines.map((outline) => silhouette(outline, pixel, border)));
  let best: Placing | undefined;
  for (let columns = 1; columns <= most.columns; columns++) {
    for (const order of orders(solid)) {
      const found = placeInOrder(solid, order, pixel, { across, down, columns, rows: most.rows });
      if (found && (!best || isBetter(found, best))) best = found;
    }
  }
  return best;
}

const isBetter = (a: Placing, b: Placing): boolean =>
  a.pages - b.pages < 0 || (a.pages === b.pages && a.columns * a.rows < b.columns * b.rows);

/** Largest area first, and longest side first. */
function orders(solid: readonly (readonly Silhouette[])[]): readonly (readonly number[])[] {
  const by = (size: (s: Silhouette) => number): readonly number[] =>
    solid
      .map((ways, index) => ({ index, size: ways[0] ? size(ways[0]) : 0 }))
      .sort((a, b) => b.size - a.size || a.index - b.index)
      .map(({ index }) => index);
  return [by(({ columns, rows }) => columns * rows), by(({ columns, rows }) => Math.max(columns, rows))];
}

function placeInOrder(
  solid: readonly (readonly Silhouette[])[],
  order: readonly number[],
  pixel: PixelSize,
  field: { readonly across: number; readonly down: number; readonly columns: number; readonly rows: number },
): Placing | undefined {
  const tallest = solid.reduce((sum, ways) => sum + (ways[0]?.rows ?? 0), field.down);
  const depth = Math.min(field.rows, Math.ceil(tallest / field.down));
  const table = new Table(field.across, field.down, field.columns, depth);
  const places: Place[] = [];
  for (const index of order) {
    const spot = table.bestSpot(solid[index] ?? []);
    if (!spot) return undefined;
    table.put(spot);
    const { row, column, way } = spot;
    places[index] = {
      corner: point(column * pixel.width + border, row * pixel.height + border),
      way,
    };
  }
  return { places, columns: table.usedColumns, rows: table.usedRows, pages: table.usedPages };
}
