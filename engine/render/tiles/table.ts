import type { Silhouette } from './silhouette.ts';

/** Where a silhouette may stand: its top left pixel, and which of its ways it lies. */
export interface Spot {
  readonly row: number;
  readonly column: number;
  readonly way: number;
  readonly silhouette: Silhouette;
}

/** Lower is better, the first difference decides: new pages, pages touched, last row, column. */
type Cost = readonly [number, number, number, number];

/** A field of pages as pixels, some of them taken. */
export class Table {
  private readonly across: number;
  private readonly down: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly pagesAcross: number;
  /** How many pixels of a row are taken before each column. */
  private readonly takenBefore: Uint16Array[];
  private readonly pages = new Set<number>();

  /** A field of `pagesAcross` by `pagesDown` pages, each of `across` by `down` pixels. */
  constructor(across: number, down: number, pagesAcross: number, pagesDown: number) {
    this.across = across;
    this.down = down;
    this.pagesAcross = pagesAcross;
    this.columns = across * pagesAcross;
    this.rows = down * pagesDown;
    this.takenBefore = Array.from({ length: this.rows }, () => new Uint16Array(this.columns + 1));
  }

  get usedPages(): number {
    return this.pages.size;
  }

  get usedColumns(): number {
    return 1 + Math.max(-1, ...Array.from(this.pages, (page) => page % this.pagesAcross));
  }

  get usedRows(): number {
    return 1 + Math.max(-1, ...Array.from(this.pages, (page) => Math.floor(page / this.pagesAcross)));
  }

  /** The best free spot for one of the ways that something may lie. */
  bestSpot(ways: readonly Silhouette[]): Spot | undefined {
    let best: { readonly spot: Spot; readonly cost: Cost } | undefined;
    for (const [way, silhouette] of ways.entries()) {
      for (let column = 0; column + silhouette.columns <= this.columns; column++) {
        for (const row of this.rowsToTry(silhouette, column)) {
          const spot = { row, column, way, silhouette };
          const cost = this.costOf(spot);
          if (!best || isLower(cost, best.cost)) best = { spot, cost };
        }
      }
    }
    return best?.spot;
  }

  put({ row, column, silhouette }: Spot): void {
    for (const run of silhouette.runs) {
      const counts = this.takenBefore[row + run.row];
      if (!counts) continue;
      for (let i = column + run.from; i <= this.columns; i++)
        counts[i] = (counts[i] ?? 0) + Math.min(i - column - run.from, run.to - run.from);
    }
    for (const page of this.pagesUnder(row, column, silhouette)) this.pages.add(page);
  }

  /** The highest free rows in a column: on the whole field, and from the top or to the bottom of each page. */
  private rowsToTry(silhouette: Silhouette, column: number): Set<number> {
    const last = this.rows - silhouette.rows;
    const rows = new Set<number>();
    for (let top = 0; top <= last; top += this.down) {
      const highest = this.highestFree(silhouette, column, top, last);
      if (highest === undefined) break;
      rows.add(highest);
      const below = Math.ceil((highest + silhouette.rows) / this.down) * this.down - silhouette.rows;
      if (below !== highest && this.isFree(silhouette, below, column)) rows.add(below);
    }
    return rows;
  }

  private highestFree(silhouette: Silhouette, column: number, from: number, to: number): number | undefined {
    for (let row = from; row <= to; row++) if (this.isFree(silhouette, row, column)) return row;
    return undefined;
  }

  private isFree(silhouette: Silhouette, row: number, column: number): boolean {
    for (const run of silhouette.runs) {
      const counts = this.takenBefore[row + run.row];
      if (!counts || counts[column + run.to] !== counts[column + run.from]) return false;
    }
    return true;
  }

  private costOf({ row, column, silhouette }: Spot): Cost {
    const touched = this.pagesUnder(row, column, silhouette);
    let fresh = 0;
    for (const page of touched) if (!this.pages.has(page)) fresh += 1;
    return [fresh, touched.size, row + silhouette.rows, column];
  }

  private pagesUnder(row: number, column: number, { rim }: Silhouette): Set<number> {
    const pages = new Set<number>();
    for (const pixel of rim) {
      const across = Math.floor((column + pixel.column) / this.across);
      pages.add(Math.floor((row + pixel.row) / this.down) * this.pagesAcross + across);
    }
    return pages;
  }
}

function isLower(a: Cost, b: Cost): boolean {
  for (const i of [0, 1, 2, 3] as const) if (a[i] !== b[i]) return a[i] < b[i];
  return false;
}
