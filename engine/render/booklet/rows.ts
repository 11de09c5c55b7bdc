import { type Point, point } from '../../geometry/point.ts';
import type { Size } from '../layout.ts';

/** Where each of some rectangles stands (its top left corner), and the room that they take together. */
export interface Rows extends Size {
  readonly corners: readonly Point[];
}

/**
 * Stands rectangles beside each other in the order given, `gap` apart, in as many rows as `width` asks for; each row
 * as high as its highest, and all centred.
 */
export function inRows(sizes: readonly Size[], width: number, gap: number): Rows {
  const rows: Size[][] = [];
  let end = Infinity;
  for (const size of sizes) {
    if (end + gap + size.width > width) {
      rows.push([]);
      end = -gap;
    }
    rows.at(-1)?.push(size);
    end += gap + size.width;
  }
  const widths = rows.map((row) => row.reduce((sum, size) => sum + size.width + gap, -gap));
  const widest = Math.max(0, ...widths);
  const corners: Point[] = [];
  let top = 0;
  for (const [i, row] of rows.entries()) {
    let left = (widest - (widths[i] ?? 0)) / 2;
    for (const size of row) {
      corners.push(point(left, top));
      left += size.width + gap;
    }
    top += Math.max(...row.map(({ height }) => height)) + gap;
  }
  return { corners, width: widest, height: Math.max(0, top - gap) };
}
