import type { Stroke } from '../../finishing/chords.ts';

/** The pixels that a shape covers, as its top left corner stands on the corner of a pixel. */
export interface Silhouette {
  readonly columns: number;
  readonly rows: number;
  /** Runs of covered pixels, the last one not counted in. */
  readonly runs: readonly { readonly row: number; readonly from: number; readonly to: number }[];
  /** The covered pixels through which lines run, as against those inside. */
  readonly rim: readonly { readonly row: number; readonly column: number }[];
}

/** Pixels along both axes, mm. */
export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

/**
 * The silhouette of a closed chain of strokes, with `border` mm around it. The strokes' coordinates count from
 * the top left corner of the shape; that corner stands `border` mm inside the silhouette. Strokes are followed in
 * steps of a quarter of the border, so none strays out of the pixels found for it.
 */
export function silhouette(outline: readonly Stroke[], pixel: PixelSize, border: number): Silhouette {
  const right = Math.max(...outline.flatMap(({ from, to }) => [from.x, to.x]));
  const bottom = Math.max(...outline.flatMap(({ from, to }) => [from.y, to.y]));
  const columns = Math.ceil((right + 2 * border) / pixel.width);
  const rows = Math.ceil((bottom + 2 * border) / pixel.height);
  const touched = new Uint8Array(columns * rows);
  const columnAt = (x: number): number => Math.min(columns - 1, Math.max(0, Math.floor(x / pixel.width)));
  const rowAt = (y: number): number => Math.min(rows - 1, Math.max(0, Math.floor(y / pixel.height)));
  for (const { from, to } of outline) {
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / (border / 4)));
    for (let i = 0; i <= steps; i++) {
      const x = from.x + ((to.x - from.x) * i) / steps;
      const y = from.y + ((to.y - from.y) * i) / steps;
      const [first, last] = [columnAt(x), columnAt(x + 2 * border)];
      for (let row = rowAt(y); row <= rowAt(y + 2 * border); row++)
        for (let column = first; column <= last; column++) touched[row * columns + column] = 1;
    }
  }
  const covered = Uint8Array.from(touched);
  for (let row = 0; row < rows; row++) {
    const crossings = crossingsOf(outline, (row + 0.5) * pixel.height - border);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.ceil(((crossings[i] ?? 0) + border) / pixel.width);
      const to = Math.floor(((crossings[i + 1] ?? 0) + border) / pixel.width);
      if (from < to) covered.fill(1, row * columns + from, row * columns + to);
    }
  }
  const rim = Array.from(touched, (is, i) => (is ? i : -1))
    .filter((i) => i >= 0)
    .map((i) => ({ row: Math.floor(i / columns), column: i % columns }));
  return { columns, rows, runs: runsOf(covered, columns), rim };
}

/** Where a level crosses a closed chain, from left to right. */
const crossingsOf = (outline: readonly Stroke[], level: number): number[] =>
  outline
    .flatMap(({ from, to }) =>
      from.y > level === to.y > level
        ? []
        : [from.x + ((level - from.y) / (to.y - from.y)) * (to.x - from.x)],
    )
    .sort((a, b) => a - b);

function runsOf(covered: Uint8Array, columns: number): Silhouette['runs'] {
  const runs: { row: number; from: number; to: number }[] = [];
  for (let start = 0; start < covered.length; start += columns) {
    let from = -1;
    for (let column = 0; column <= columns; column++) {
      const is = column < columns && covered[start + column] === 1;
      if (is && from < 0) from = column;
      if (is || from < 0) continue;
      runs.push({ row: start / columns, from, to: column });
      from = -1;
    }
  }
  return runs;
}
