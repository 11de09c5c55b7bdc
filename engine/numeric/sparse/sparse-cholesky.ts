import { type BlockMatrix, blockPlaces } from './block-matrix.ts';
import { DenseFront } from './dense-front.ts';
import type { Graph } from './graph.ts';
import { nestedDissection, type Parting } from './nested-dissection.ts';

/** A front: nodes eliminated together, the later nodes that they reach, and where things of both kinds are kept. */
interface Front {
  /** Own nodes first, in order of elimination. */
  readonly nodes: Int32Array;
  readonly own: number;
  readonly factorAt: number;
  /** For each child, which of this front's nodes each node reached by the child is. */
  readonly fromChildren: readonly Int32Array[];
  /** Blocks of the matrix that enter here: place in its values, row and column among the nodes, 1 where to be transposed. */
  readonly entries: Int32Array;
}

/**
 * Cholesky factors of block matrices over one graph: the order and all places are found once, a factor then is sums and
 * products over flat arrays. Multifrontal (Duff & Reid, 1983, "The multifrontal solution of indefinite sparse symmetric
 * linear systems", ACM TOMS 9), on the tree that nested dissection leaves.
 */
export class SparseCholesky {
  readonly #fronts: Front[] = [];
  readonly #factor: Float64Array;
  readonly #front: DenseFront;
  readonly #stack: Float64Array;
  readonly #gathered: Float64Array;

  /** `places`: where the nodes lie, `axes` numbers each; see `nestedDissection`. */
  constructor(graph: Graph, places: Float64Array, axes: number) {
    const tree = nestedDissection(graph, places, axes);
    const rank = new Int32Array(graph.count);
    let next = 0;
    const number = (part: Parting): void => {
      for (const child of part.children) number(child);
      for (const node of part.own) rank[node] = next++;
    };
    number(tree);
    const place = blockPlaces(graph);
    let factorSize = 0;
    let largest = 0;
    let most = 0;
    const build = (part: Parting, below: number): Int32Array => {
      let held = below;
      const reached: Int32Array[] = [];
      for (const child of part.children) {
        const nodes = build(child, held);
        reached.push(nodes);
        held += 9 * nodes.length * nodes.length;
      }
      const own = new Set(part.own);
      const lowest = part.own.length > 0 ? (rank[part.own[0] as number] as number) : Infinity;
      const later = new Set<number>();
      for (const node of part.own)
        for (let i = graph.starts[node] as number; i < (graph.starts[node + 1] as number); i++) {
          const other = graph.neighbours[i] as number;
          if ((rank[other] as number) >= lowest && !own.has(other)) later.add(other);
        }
      for (const nodes of reached) for (const node of nodes) if (!own.has(node)) later.add(node);
      const sorted = [...later].sort((a, b) => (rank[a] as number) - (rank[b] as number));
      const nodes = Int32Array.from([...part.own, ...sorted]);
      const local = new Map([...nodes].map((node, i) => [node, i]));
      const at = (node: number): number => local.get(node) as number;
      const entries: number[] = [];
      for (const node of part.own) {
        entries.push(place(node, node), at(node), at(node), 0);
        for (let i = graph.starts[node] as number; i < (graph.starts[node + 1] as number); i++) {
          const other = graph.neighbours[i] as number;
          if ((rank[other] as number) > (rank[node] as number))
            entries.push(place(node, other), at(other), at(node), other > node ? 0 : 1);
        }
      }
      this.#fronts.push({
        nodes,
        own: part.own.length,
        factorAt: factorSize,
        fromChildren: reached.map((list) => list.map(at)),
        entries: Int32Array.from(entries),
      });
      const rows = 3 * nodes.length;
      factorSize += rows * 3 * part.own.length;
      largest = Math.max(largest, rows);
      most = Math.max(most, held, below + 9 * sorted.length * sorted.length);
      return nodes.slice(part.own.length);
    };
    build(tree, 0);
    this.#factor = new Float64Array(factorSize);
    this.#front = new DenseFront(largest * largest);
    this.#stack = new Float64Array(most);
    this.#gathered = new Float64Array(largest);
  }

  /** How many numbers the factor holds. */
  get size(): number {
    return this.#factor.length;
  }

  /** Factors a matrix over the graph; false where it is not positive definite. */
  factor({ values }: BlockMatrix): boolean {
    const work = this.#front.entries;
    const stack = this.#stack;
    const factor = this.#factor;
    let top = 0;
    for (const front of this.#fronts) {
      const rows = 3 * front.nodes.length;
      const columns = 3 * front.own;
      for (let i = 0, row = 0; i < rows; i++, row += rows) work.fill(0, row, row + i + 1);
      this.#enter(front, values, rows);
      for (let c = front.fromChildren.length - 1; c >= 0; c--) {
        const map = front.fromChildren[c] as Int32Array;
        top -= 9 * map.length * map.length;
        addChild(work, rows, stack, top, map);
      }
      if (!this.#front.factor(rows, columns)) return false;
      let to = front.factorAt;
      for (let i = 0; i < rows; i++, to += columns) {
        const from = i * rows;
        const count = Math.min(columns, i + 1);
        for (let j = 0; j < count; j++) factor[to + j] = work[from + j] as number;
      }
      for (let i = columns; i < rows; i++) {
        const from = i * rows + columns;
        const row = top + (i - columns) * (rows - columns);
        for (let j = 0; j <= i - columns; j++) stack[row + j] = work[from + j] as number;
      }
      top += (rows - columns) * (rows - columns);
    }
    return true;
  }

  #enter({ entries }: Front, values: Float64Array, rows: number): void {
    const work = this.#front.entries;
    for (let e = 0; e < entries.length; e += 4) {
      const from = entries[e] as number;
      const to = 3 * (entries[e + 1] as number) * rows + 3 * (entries[e + 2] as number);
      const across = entries[e + 3] === 1 ? 1 : 3;
      const down = 4 - across;
      for (let i = 0; i < 3; i++) {
        const row = to + i * rows;
        const at = from + across * i;
        work[row] = values[at] as number;
        work[row + 1] = values[at + down] as number;
        work[row + 2] = values[at + 2 * down] as number;
      }
    }
  }

  /** Solves for the unknowns, over the right side. */
  solve(b: Float64Array): void {
    const factor = this.#factor;
    const x = this.#gathered;
    for (const { nodes, own, factorAt } of this.#fronts) {
      const columns = 3 * own;
      for (let i = 0; i < nodes.length; i++) {
        const node = 3 * (nodes[i] as number);
        for (let k = 0; k < 3; k++) {
          const row = 3 * i + k;
          const at = factorAt + row * columns;
          const upTo = Math.min(row, columns);
          let sum = b[node + k] as number;
          for (let j = 0; j < upTo; j++) sum -= (factor[at + j] as number) * (x[j] as number);
          if (row < columns) {
            sum /= factor[at + row] as number;
            x[row] = sum;
          }
          b[node + k] = sum;
        }
      }
    }
    for (let f = this.#fronts.length - 1; f >= 0; f--) {
      const { nodes, own, factorAt } = this.#fronts[f] as Front;
      const columns = 3 * own;
      for (let i = 0; i < nodes.length; i++)
        for (let k = 0; k < 3; k++) x[3 * i + k] = b[3 * (nodes[i] as number) + k] as number;
      for (let row = 3 * nodes.length - 1; row >= 0; row--) {
        const at = factorAt + row * columns;
        if (row < columns) x[row] = (x[row] as number) / (factor[at + row] as number);
        const value = x[row] as number;
        const upTo = Math.min(row, columns);
        for (let j = 0; j < upTo; j++) x[j] = (x[j] as number) - (factor[at + j] as number) * value;
      }
      for (let i = 0; i < own; i++)
        for (let k = 0; k < 3; k++) b[3 * (nodes[i] as number) + k] = x[3 * i + k] as number;
    }
  }
}

/** Adds what a child left over, a lower triangle of rows of threes, to the front of its parent, which has the same order. */
function addChild(
  work: Float64Array,
  rows: number,
  stack: Float64Array,
  from: number,
  map: Int32Array,
): void {
  const order = 3 * map.length;
  for (let a = 0; a < map.length; a++)
    for (let i = 0; i < 3; i++) {
      const row = from + (3 * a + i) * order;
      const into = (3 * (map[a] as number) + i) * rows;
      for (let b = 0; b < a; b++) {
        const at = into + 3 * (map[b] as number);
        const left = row + 3 * b;
        work[at] = (work[at] as number) + (stack[left] as number);
        work[at + 1] = (work[at + 1] as number) + (stack[left + 1] as number);
        work[at + 2] = (work[at + 2] as number) + (stack[left + 2] as number);
      }
      for (let j = 0; j <= i; j++) {
        const at = into + 3 * (map[a] as number) + j;
        work[at] = (work[at] as number) + (stack[row + 3 * a + j] as number);
      }
    }
}
