import { type Point, point } from '../geometry/point.ts';

/** How much room something takes, mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where each rectangle stands (its top left corner), in the order given, and the paper that takes them all. */
export interface Shelves {
  readonly corners: readonly Point[];
  readonly paper: Size;
}

interface LayoutRow {
  readonly top: number;
  readonly height: number;
  /** Where the next rectangle may begin. */
  readonly end: number;
}

/**
 * Stands rectangles in rows on paper of about `width` (wider if one of them is), each row as high as its highest,
 * `gap` apart and as far from the edge. Highest first, each into the first row that has room (first-fit decreasing
 * height: E. G. Coffman, M. R. Garey, D. S. Johnson, R. E. Tarjan, 1980).
 */
export function standInRows(sizes: readonly Size[], width: number, gap: number): Shelves {
  const roll = Math.max(width, ...sizes.map((size) => size.width + 2 * gap));
  const highestFirst = sizes
    .map((size, index) => ({ size, index }))
    .sort((a, b) => b.size.height - a.size.height || a.index - b.index);
  const corners: Point[] = [];
  const rows: LayoutRow[] = [];
  for (const { size, index } of highestFirst) {
    const found = rows.findIndex(({ end }) => end + size.width + gap <= roll);
    const last = rows.at(-1);
    const below: LayoutRow = {
      top: last ? last.top + last.height + gap : gap,
      height: size.height,
      end: gap,
    };
    const row = rows[found] ?? below;
    corners[index] = point(row.end, row.top);
    rows[found < 0 ? rows.length : found] = { ...row, end: row.end + size.width + gap };
  }
  const last = rows.at(-1);
  const paper = {
    width: Math.max(2 * gap, ...rows.map(({ end }) => end)),
    height: last ? last.top + last.height + gap : 2 * gap,
  };
  return { corners, paper };
}
