import type { NoFit } from './no-fit.ts';

/** Cells along the longer side of a field. More: quicker answers, but each cell is made when it is first asked for. */
const fineness = 48;

/** What is known of a cell: nothing yet, or that all of it is free. */
const unknown = 0;
const free = -1;

/** Numbers kept of a field: left, top, cells a unit, columns, rows, its first cell, its first stretch, how many. */
const perField = 8;

/** Numbers kept of a stretch: its start, its unit direction, its length. */
const perStretch = 5;

/**
 * How deep a difference of places lies inside no-fit regions: the distance to the boundary, which is the least move that
 * parts the two shapes. A grid over each region remembers for each cell which stretches of the boundary can be nearest to
 * any place in it, found the first time it is asked for; the answers are those of all stretches. All regions share flat
 * arrays, since some millions of answers are asked for a second.
 */
export class DepthFields {
  private readonly fields: Float64Array;
  private readonly stretches: Float64Array;
  /** Where the list of a cell begins in `lists`, which hold a count and where each of so many stretches stands. */
  private readonly cells: Int32Array;
  private lists = new Int32Array(1 << 16);
  private end = 1;
  /** Where every stretch stands, in their order. */
  private readonly all: Int32Array;
  /** Room for the squared distances of a region's stretches. */
  private readonly away: Float64Array;
  /** No place in a cell lies less deep, once it has been looked at. */
  private readonly sure: Float32Array;

  /** Fields of some regions, named by their places in the list. */
  constructor(regions: readonly NoFit[]) {
    this.fields = new Float64Array(perField * regions.length);
    this.stretches = new Float64Array(
      perStretch * regions.reduce((sum, { stretches }) => sum + stretches.length / 4, 0),
    );
    let cells = 0;
    let first = 0;
    for (const [i, { stretches, left, right, top, bottom }] of regions.entries()) {
      const [width, height] = [right - left, bottom - top];
      const perUnit = fineness / Math.max(width, height);
      const columns = Math.floor(width * perUnit) + 1;
      const rows = Math.floor(height * perUnit) + 1;
      const count = stretches.length / 4;
      this.fields.set([left, top, perUnit, columns, rows, cells, first, count], perField * i);
      cells += columns * rows;
      for (let k = 0; k < stretches.length; k += 4, first++) {
        const [ax, ay] = [stretches[k] as number, stretches[k + 1] as number];
        const [ex, ey] = [(stretches[k + 2] as number) - ax, (stretches[k + 3] as number) - ay];
        const length = Math.sqrt(ex * ex + ey * ey);
        this.stretches.set([ax, ay, ex / length, ey / length, length], perStretch * first);
      }
    }
    this.cells = new Int32Array(cells);
    this.sure = new Float32Array(cells);
    this.all = Int32Array.from({ length: first }, (_, i) => perStretch * i);
    this.away = new Float64Array(Math.max(0, ...regions.map(({ stretches }) => stretches.length / 4)));
  }

  /** How deep x, y lies inside a region; 0 outside. May tell less, but no less than `enough`, where it is deeper than that. */
  depth(field: number, x: number, y: number, enough: number): number {
    const { fields } = this;
    const at = perField * field;
    const perUnit = fields[at + 2] as number;
    const column = ((x - (fields[at] as number)) * perUnit) | 0;
    const row = ((y - (fields[at + 1] as number)) * perUnit) | 0;
    const columns = fields[at + 3] as number;
    if (column < 0 || row < 0 || column >= columns || row >= (fields[at + 4] as number)) return 0;
    const cell = (fields[at + 5] as number) + row * columns + column;
    let list = this.cells[cell] as number;
    if (list === unknown) list = this.look(field, column, row, cell);
    if (list === free) return 0;
    const sure = this.sure[cell] as number;
    if (sure >= enough) return sure;
    return Math.max(this.nearest(x, y, this.lists, list + 1, this.lists[list] as number), 0);
  }

  /**
   * The distance to the nearest of some stretches, less than nothing outside. At a corner two stretches are equally near, and
   * the one whose line is farther away tells on which side the place is; of two in one place, the sides of a slit, the one that
   * has it inside.
   */
  private nearest(x: number, y: number, list: Int32Array, from: number, count: number): number {
    const { stretches } = this;
    let best = Infinity;
    let bestLine = 0;
    for (let i = from; i < from + count; i++) {
      const k = list[i] as number;
      const dx = x - (stretches[k] as number);
      const dy = y - (stretches[k + 1] as number);
      const ux = stretches[k + 2] as number;
      const uy = stretches[k + 3] as number;
      const along = dx * ux + dy * uy;
      const line = ux * dy - uy * dx;
      const beyond = along < 0 ? along : Math.max(along - (stretches[k + 4] as number), 0);
      const far = line * line;
      const away = far + beyond * beyond;
      if (away < best * (1 - tie)) {
        best = away;
        bestLine = line;
      } else if (away <= best * (1 + tie)) {
        const bestFar = bestLine * bestLine;
        if (away < best) best = away;
        if (far > bestFar * (1 + tie) || (line > 0 && far >= bestFar * (1 - tie))) bestLine = line;
      }
    }
    return bestLine > 0 ? Math.sqrt(best) : -Math.sqrt(best);
  }

  /** Finds what matters in a cell. */
  private look(field: number, column: number, row: number, cell: number): number {
    const { fields, stretches } = this;
    const at = perField * field;
    const perUnit = fields[at + 2] as number;
    const [first, count] = [fields[at + 6] as number, fields[at + 7] as number];
    const x = (fields[at] as number) + (column + 0.5) / perUnit;
    const y = (fields[at + 1] as number) + (row + 0.5) / perUnit;
    const reach = Math.SQRT1_2 / perUnit;
    const { away, all } = this;
    let least = Infinity;
    for (let i = 0; i < count; i++) {
      const k = perStretch * (first + i);
      const dx = x - (stretches[k] as number);
      const dy = y - (stretches[k + 1] as number);
      const ux = stretches[k + 2] as number;
      const uy = stretches[k + 3] as number;
      const along = dx * ux + dy * uy;
      const line = ux * dy - uy * dx;
      const beyond = along < 0 ? along : Math.max(along - (stretches[k + 4] as number), 0);
      const square = line * line + beyond * beyond;
      away[i] = square;
      if (square < least) least = square;
    }
    const depth = this.nearest(x, y, all, first, count);
    if (Math.sqrt(least) > reach && depth < 0) {
      this.cells[cell] = free;
      return free;
    }
    const limit = ((Math.sqrt(least) + 2 * reach) * (1 + 2 * tie)) ** 2;
    const list = this.end;
    if (list + 1 + count > this.lists.length) {
      const wider = new Int32Array(2 * (list + 1 + count));
      wider.set(this.lists);
      this.lists = wider;
    }
    for (let i = 0; i < count; i++)
      if ((away[i] as number) <= limit) this.lists[++this.end] = all[first + i] as number;
    this.lists[list] = this.end - list;
    this.end += 1;
    // A little less, so that neither the digits of a short number nor rounding at a corner tell more than there is.
    this.sure[cell] = Math.max(0, (depth - reach) * (1 - 1e-6));
    this.cells[cell] = list;
    return list;
  }
}

/** Squared distances that differ by less, as a share, are equal. */
const tie = 1e-9;
