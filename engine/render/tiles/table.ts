import type { PagesUnder } from './pages-under.ts';
import type { Silhouette } from './silhouette.ts';

/** A field of pages joined edge to edge, each of `across` by `down` pixels. */
export interface PixelField {
  readonly across: number;
  readonly down: number;
  readonly columns: number;
  readonly rows: number;
}

/** What may be placed: its silhouette, and the pages it touches wherever it stands. */
export interface Movable {
  readonly silhouette: Silhouette;
  readonly pages: PagesUnder;
}

/** Where something may stand: its top left pixel, and which of its ways it lies. */
export interface Spot {
  readonly row: number;
  readonly column: number;
  readonly way: number;
  readonly movable: Movable;
}

/** A field of pages as pixels, some of them taken. */
export class PixelTable {
  private readonly field: PixelField;
  private readonly columns: number;
  private readonly rows: number;
  /** How many pixels of a row are taken before each column. */
  private readonly takenBefore: readonly Uint16Array[];
  private readonly pageUsed: Uint8Array;
  /** The row below everything placed so far. */
  private bottom = 0;
  /** The run that last stood in the way: most likely it does so again. */
  private culprit = 0;

  constructor(field: PixelField) {
    this.field = field;
    this.columns = field.across * field.columns;
    this.rows = field.down * field.rows;
    this.takenBefore = Array.from({ length: this.rows }, () => new Uint16Array(this.columns + 1));
    this.pageUsed = new Uint8Array(field.columns * field.rows);
  }

  /** The pages on which a line runs: how many, and the columns and rows that hold them. */
  used(): { readonly pages: number; readonly columns: number; readonly rows: number } {
    const pages = Array.from(this.pageUsed, (is, page) => (is ? page : -1)).filter((page) => page >= 0);
    return {
      pages: pages.length,
      columns: 1 + Math.max(-1, ...pages.map((page) => page % this.field.columns)),
      rows: 1 + Math.max(-1, ...pages.map((page) => Math.floor(page / this.field.columns))),
    };
  }

  /**
   * The best free spot for one of the ways that something may lie: the one that takes the fewest new pages, then
   * the fewest pages at all, then ends highest, then begins leftmost.
   */
  bestSpot(ways: readonly Movable[]): Spot | undefined {
    let best: Spot | undefined;
    let least = Infinity;
    for (const [way, movable] of ways.entries()) {
      const { silhouette } = movable;
      for (let column = 0; column + silhouette.columns <= this.columns; column++) {
        for (const row of this.rowsToTry(silhouette, column)) {
          const cost = this.cost(movable, row, column);
          if (cost >= least) continue;
          least = cost;
          best = { row, column, way, movable };
        }
      }
    }
    return best;
  }

  put({ row, column, movable: { silhouette, pages } }: Spot): void {
    for (const run of silhouette.runs) {
      const counts = this.takenBefore[row + run.row];
      if (!counts) continue;
      for (let i = column + run.from; i <= this.columns; i++)
        counts[i] = (counts[i] ?? 0) + Math.min(i - column - run.from, run.to - run.from);
    }
    for (const page of pages.at(row, column)) this.pageUsed[this.pageAt(row, column) + page] = 1;
    this.bottom = Math.max(this.bottom, row + silhouette.rows);
  }

  /** The highest free rows in a column: on the whole field, and from the top or to the bottom of each page. */
  private rowsToTry(silhouette: Silhouette, column: number): readonly number[] {
    const { down } = this.field;
    const last = this.rows - silhouette.rows;
    const rows: number[] = [];
    for (let top = 0; top <= last && top < this.bottom + down; top += down) {
      if (top <= (rows.at(-1) ?? -1)) continue;
      const highest = this.highestFree(silhouette, column, top, last);
      if (highest === undefined) break;
      rows.push(highest);
      const below = Math.ceil((highest + silhouette.rows) / down) * down - silhouette.rows;
      if (below > highest && below <= last && this.isFree(silhouette, below, column)) rows.push(below);
    }
    return rows;
  }

  private highestFree(silhouette: Silhouette, column: number, from: number, to: number): number | undefined {
    for (let row = from; row <= to; row++) if (this.isFree(silhouette, row, column)) return row;
    return undefined;
  }

  private isFree({ runs }: Silhouette, row: number, column: number): boolean {
    for (let i = 0; i < runs.length; i++) {
      const index = (this.culprit + i) % runs.length;
      const run = runs[index];
      const counts = run && this.takenBefore[row + run.row];
      if (counts && counts[column + run.to] === counts[column + run.from]) continue;
      this.culprit = index;
      return false;
    }
    return true;
  }

  /** One number in which the first difference that counts outweighs all after it. */
  private cost({ silhouette, pages }: Movable, row: number, column: number): number {
    const here = this.pageAt(row, column);
    const touched = pages.at(row, column);
    let fresh = 0;
    for (const page of touched) if (!this.pageUsed[here + page]) fresh += 1;
    const place = (row + silhouette.rows) * this.columns + column;
    return (fresh * 1000 + touched.length) * (this.rows + 1) * this.columns + place;
  }

  private pageAt(row: number, column: number): number {
    const { across, down, columns } = this.field;
    return Math.floor(row / down) * columns + Math.floor(column / across);
  }
}
