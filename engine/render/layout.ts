import type { Point } from '../geometry/point.ts';

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

/**
 * Stands rectangles in rows on paper of about `width` (wider if one of them is), each row as high as its highest,
 * `gap` apart and as far from the edge. Higher ones come first, which wastes least (next-fit decreasing height:
 * E. G. Coffman, M. R. Garey, D. S. Johnson, R. E. Tarjan, 1980).
 */
export function standInRows(sizes: readonly Size[], width: number, gap: number): Shelves {
  const roll = Math.max(width, ...sizes.map((size) => size.width + 2 * gap));
  const highestFirst = sizes.map((size, index) => ({ size, index }));
  highestFirst.sort((a, b) => b.size.height - a.size.height || a.index - b.index);
  const corners: Point[] = [];
  let [x, y, rowHeight, used] = [gap, gap, 0, 0];
  for (const { size, index } of highestFirst) {
    if (x > gap && x + size.width + gap > roll) {
      y += rowHeight + gap;
      [x, rowHeight] = [gap, 0];
    }
    corners[index] = { x, y };
    x += size.width + gap;
    rowHeight = Math.max(rowHeight, size.height);
    used = Math.max(used, x);
  }
  return { corners, paper: { width: used, height: y + rowHeight + gap } };
}
