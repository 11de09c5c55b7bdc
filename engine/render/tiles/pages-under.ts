import type { Silhouette } from './silhouette.ts';

/**
 * The pages that the lines of a silhouette touch. They depend only on where its corner stands on its own page,
 * so each is worked out once and remembered.
 */
export class PagesUnder {
  private readonly known = new Map<number, readonly number[]>();
  private readonly silhouette: Silhouette;
  private readonly across: number;
  private readonly down: number;
  private readonly columns: number;

  /** Pages of `across` by `down` pixels, `columns` of them side by side. */
  constructor(silhouette: Silhouette, across: number, down: number, columns: number) {
    this.silhouette = silhouette;
    this.across = across;
    this.down = down;
    this.columns = columns;
  }

  /** How far along the row-by-row list of pages each page touched is from the one that holds the corner. */
  at(row: number, column: number): readonly number[] {
    const [y, x] = [row % this.down, column % this.across];
    const key = y * this.across + x;
    const found = this.known.get(key) ?? this.touched(y, x);
    this.known.set(key, found);
    return found;
  }

  private touched(y: number, x: number): readonly number[] {
    const pages = new Set<number>();
    for (const { row, column } of this.silhouette.rim)
      pages.add(Math.floor((y + row) / this.down) * this.columns + Math.floor((x + column) / this.across));
    return [...pages];
  }
}
