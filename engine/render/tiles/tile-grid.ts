import { strokes } from '../../finishing/label.ts';
import { distanceToStroke } from '../../finishing/rectangle.ts';
import { type Bounds, boundsMeet } from '../../geometry/bounds.ts';
import { point } from '../../geometry/point.ts';
import type { Ink } from '../ink.ts';
import type { BoundedInk } from '../ink-bounds.ts';
import type { Size } from '../layout.ts';

/** One page's share of the joined sheet. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** A letter for the row, a number for the column, such as `B3`. */
  readonly name: string;
  /** What only this page shows, in millimetres of the joined sheet. */
  readonly cell: Bounds;
}

/** The tiles of a joined sheet on which anything is drawn, row by row. Tiles side by side share an edge. */
export const tilesOf = (
  drawn: readonly BoundedInk[],
  cell: Size,
  grid: { readonly columns: number; readonly rows: number },
): readonly Tile[] =>
  Array.from({ length: grid.rows * grid.columns }, (_, i) =>
    tileAt(Math.floor(i / grid.columns), i % grid.columns, cell),
  ).filter((tile) =>
    drawn.some(({ ink, bounds }) => boundsMeet(bounds, tile.cell) && reaches(ink, tile.cell)),
  );

function tileAt(row: number, column: number, cell: Size): Tile {
  const left = column * cell.width;
  const top = row * cell.height;
  const bounds = { left, top, right: left + cell.width, bottom: top + cell.height };
  return { row, column, name: `${rowLetters(row)}${column + 1}`, cell: bounds };
}

/** A to Z, then AA, AB and so on. */
export const rowLetters = (row: number): string =>
  (row < 26 ? '' : rowLetters(Math.floor(row / 26) - 1)) + String.fromCharCode(65 + (row % 26));

/** Whether a line runs into a cell; of text and circles, whether the box about them does. */
export function reaches(ink: Ink, { left, top, right, bottom }: Bounds): boolean {
  if (ink.kind !== 'chain') return true;
  const middle = point((left + right) / 2, (top + bottom) / 2);
  const rectangle = { middle, width: right - left, height: bottom - top };
  return ink.curves.some((curve) =>
    strokes(curve).some((stroke) => distanceToStroke(rectangle, stroke) === 0),
  );
}
