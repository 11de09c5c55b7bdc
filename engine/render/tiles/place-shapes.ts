import type { Stroke } from '../../finishing/chords.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { Size } from '../layout.ts';
import { PagesUnder } from './pages-under.ts';
import { type PixelSize, type Silhouette, silhouette } from './silhouette.ts';
import { type Movable, type PixelField, PixelTable } from './table.ts';

/** Something to place: its closed outline, from its own top left corner, one for each way it may lie. */
export interface Shape {
  readonly outlines: readonly (readonly Stroke[])[];
}

/** Where a shape came to lie: its top left corner, and which of its outlines lies there. */
export interface ShapePlace {
  readonly corner: Point;
  readonly way: number;
}

export interface Placing {
  readonly places: readonly ShapePlace[];
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
 * then leftmost (a bottom-left rule: B. S. Baker, E. G. Coffman, R. L. Rivest, 1980, on pixels). Tried for fields
 * of one to `most.columns` columns and two orders of the shapes; the best is kept. No more than `most.rows` rows
 * are used. Undefined when there is no room.
 */
export function placeShapes(
  shapes: readonly Shape[],
  cell: Size,
  most: { readonly columns: number; readonly rows: number },
): Placing | undefined {
  const field = { width: cell.width * most.columns, height: cell.height * most.rows };
  if (!shapes.every(({ outlines }) => outlines.some((outline) => fits(outline, field)))) return undefined;
  const across = Math.round(cell.width / roughPixel);
  const down = Math.round(cell.height / roughPixel);
  const pixel = { width: cell.width / across, height: cell.height / down };
  const solid = shapes.map(({ outlines }) => outlines.map((outline) => silhouette(outline, pixel, border)));
  const covered = solid.reduce((sum, ways) => sum + (ways[0] ? pixelsOf(ways[0]) : 0), 0) / (across * down);
  const height = solid.reduce((sum, ways) => sum + (ways[0]?.rows ?? 0), 0);
  let best: Placing | undefined;
  for (let columns = 1; columns <= Math.min(most.columns, Math.ceil(Math.sqrt(covered)) + spare); columns++) {
    const rows = Math.min(most.rows, Math.ceil(height / down) + 1);
    const movable = solid.map((ways) =>
      ways.map((way) => ({ silhouette: way, pages: new PagesUnder(way, across, down, columns) })),
    );
    for (const order of orders(solid)) {
      const found = placeInOrder(
        movable,
        order,
        pixel,
        { across, down, columns, rows },
        best?.pages ?? Infinity,
      );
      if (found && (!best || isBetter(found, best))) best = found;
    }
  }
  return best;
}

const fits = (outline: readonly Stroke[], { width, height }: Size): boolean =>
  outline.every(({ from }) => from.x + 2 * border <= width && from.y + 2 * border <= height);

/** Columns tried beyond those of a square field that the shapes would cover wholly. */
const spare = 2;

const pixelsOf = ({ runs }: Silhouette): number => runs.reduce((sum, { from, to }) => sum + to - from, 0);

const isBetter = (a: Placing, b: Placing): boolean =>
  a.pages < b.pages || (a.pages === b.pages && a.columns * a.rows < b.columns * b.rows);

/** Largest area first, and longest side first. */
function orders(solid: readonly (readonly Silhouette[])[]): readonly (readonly number[])[] {
  const by = (size: (s: Silhouette) => number): readonly number[] =>
    solid
      .map((ways, index) => ({ index, size: ways[0] ? size(ways[0]) : 0 }))
      .sort((a, b) => b.size - a.size || a.index - b.index)
      .map(({ index }) => index);
  return [by(pixelsOf), by(({ columns, rows }) => Math.max(columns, rows))];
}

/** Places shapes one after another; gives up when there is no room, or once they touch more than `most` pages. */
function placeInOrder(
  shapes: readonly (readonly Movable[])[],
  order: readonly number[],
  pixel: PixelSize,
  field: PixelField,
  most: number,
): Placing | undefined {
  const table = new PixelTable(field);
  const places: ShapePlace[] = [];
  for (const index of order) {
    const spot = table.bestSpot(shapes[index] ?? []);
    if (!spot) return undefined;
    table.put(spot);
    if (table.used().pages > most) return undefined;
    const { row, column, way } = spot;
    places[index] = { corner: point(column * pixel.width + border, row * pixel.height + border), way };
  }
  return { places, ...table.used() };
}
