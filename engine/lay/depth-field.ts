import type { NoFit } from './no-fit.ts';

/** Cells along the longer side of a field. More: quicker answers, but each cell is made when it is first asked for. */
const fineness = 40;

/** What is known of a cell: nothing yet, or that all of it is free. */
const unknown = 0;
const free = -1;

/**
 * How deep a difference of places lies inside a no-fit region: the distance to its boundary, which is the least move that
 * parts the two shapes. A grid over the region remembers for each cell which stretches of the boundary can be nearest to
 * any place in it, found the first time it is asked for; the answers are those of all stretches.
 */
export class DepthField {
  private readonly left: number;
  private readonly top: number;
  private readonly perUnit: number;
  private readonly columns: number;
  private readonly rows: number;
  /** Where the list of a cell begins in `lists`, which hold a count and so many stretches. */
  private readonly cells: Int32Array;
  private lists: Int32Array;
  private end = 1;
  /** ax, ay, unit x, unit y, length of each stretch. */
  private readonly stretches: Float64Array;
  private readonly margin: number;
  private readonly tie: number;

  constructor(region: NoFit, margin: number) {
    const { stretches, left, right, top, bottom } = region;
    const size = Math.max(right - left, bottom - top) + 2 * margin;
    const cell = size / fineness;
    this.margin = margin;
    this.tie = 1e-9 * size;
    this.left = left - margin;
    this.top = top - margin;
    this.perUnit = 1 / cell;
    this.columns = Math.floor((right - left + 2 * margin) / cell) + 1;
    this.rows = Math.floor((bottom - top + 2 * margin) / cell) + 1;
    this.cells = new Int32Array(this.columns * this.rows);
    this.lists = new Int32Array(1024);
    const count = stretches.length / 4;
    this.stretches = new Float64Array(5 * count);
    for (let i = 0; i < count; i++) {
      const [ax, ay] = [stretches[4 * i] as number, stretches[4 * i + 1] as number];
      const [ex, ey] = [(stretches[4 * i + 2] as number) - ax, (stretches[4 * i + 3] as number) - ay];
      const length = Math.sqrt(ex * ex + ey * ey);
      this.stretches.set([ax, ay, ex / length, ey / length, length], 5 * i);
    }
  }

  /** How deep x, y lies inside the region grown by the margin; 0 outside. Asked only within its bounds. */
  depth(x: number, y: number): number {
    const column = ((x - this.left) * this.perUnit) | 0;
    const row = ((y - this.top) * this.perUnit) | 0;
    if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) return 0;
    const cell = row * this.columns + column;
    let list = this.cells[cell] as number;
    if (list === free) return 0;
    if (list === unknown) {
      list = this.look(column, row);
      if (list === free) return 0;
    }
    const found = this.nearest(x, y, this.lists, list + 1, this.lists[list] as number) + this.margin;
    return found > 0 ? found : 0;
  }

  /**
   * The distance to the nearest of some stretches, less than nothing outside. At a corner two stretches are equally near, and
   * the one whose line is farther away tells on which side the place is.
   */
  private nearest(x: number, y: number, list: Int32Array, from: number, count: number): number {
    const { stretches, tie } = this;
    let best = Infinity;
    let bestLine = 0;
    for (let i = from; i < from + count; i++) {
      const k = 5 * (list[i] as number);
      const dx = x - (stretches[k] as number);
      const dy = y - (stretches[k + 1] as number);
      const ux = stretches[k + 2] as number;
      const uy = stretches[k + 3] as number;
      const along = dx * ux + dy * uy;
      const line = ux * dy - uy * dx;
      const length = stretches[k + 4] as number;
      let away = line < 0 ? -line : line;
      if (along < 0) away = Math.sqrt(dx * dx + dy * dy);
      else if (along > length) {
        const beyond = along - length;
        away = Math.sqrt(line * line + beyond * beyond);
      }
      if (away < best - tie) {
        best = away;
        bestLine = line;
      } else if (away <= best + tie) {
        if (away < best) best = away;
        if ((line < 0 ? -line : line) > (bestLine < 0 ? -bestLine : bestLine)) bestLine = line;
      }
    }
    return bestLine > 0 ? best : -best;
  }

  /** Finds what matters in a cell. */
  private look(column: number, row: number): number {
    const { stretches } = this;
    const count = stretches.length / 5;
    const x = this.left + (column + 0.5) / this.perUnit;
    const y = this.top + (row + 0.5) / this.perUnit;
    const reach = Math.SQRT1_2 / this.perUnit;
    const away = new Float64Array(count);
    const all = new Int32Array(count);
    let least = Infinity;
    for (let i = 0; i < count; i++) {
      all[i] = i;
      const k = 5 * i;
      const dx = x - (stretches[k] as number);
      const dy = y - (stretches[k + 1] as number);
      const along = dx * (stretches[k + 2] as number) + dy * (stretches[k + 3] as number);
      const t = Math.min(Math.max(along, 0), stretches[k + 4] as number);
      const ex = dx - t * (stretches[k + 2] as number);
      const ey = dy - t * (stretches[k + 3] as number);
      const d = Math.sqrt(ex * ex + ey * ey);
      away[i] = d;
      if (d < least) least = d;
    }
    const cell = row * this.columns + column;
    if (least > reach + this.margin && this.nearest(x, y, all, 0, count) < 0) {
      this.cells[cell] = free;
      return free;
    }
    const near: number[] = [];
    const limit = least + 2 * reach + 2 * this.tie;
    for (let i = 0; i < count; i++) if ((away[i] as number) <= limit) near.push(i);
    const list = this.end;
    if (list + near.length + 1 > this.lists.length) {
      const wider = new Int32Array(2 * (this.lists.length + near.length));
      wider.set(this.lists);
      this.lists = wider;
    }
    this.lists[list] = near.length;
    for (const [i, stretch] of near.entries()) this.lists[list + 1 + i] = stretch;
    this.end = list + 1 + near.length;
    this.cells[cell] = list;
    return list;
  }
}
