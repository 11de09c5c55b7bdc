import type { Graph } from './graph.ts';

/**
 * A symmetric sparse matrix of 3 by 3 blocks, one for each node and one for each pair of neighbours (a > b). A block holds
 * its nine numbers row by row; the rows are those of a.
 */
export interface BlockMatrix {
  readonly graph: Graph;
  readonly values: Float64Array;
}

export const blockMatrix = (graph: Graph): BlockMatrix => ({
  graph,
  values: new Float64Array(9 * (graph.count + graph.neighbours.length / 2)),
});

/** Where in `values` the blocks stand: those of the nodes first, then those of the pairs, by their greater node. */
export function blockPlaces(graph: Graph): (a: number, b: number) => number {
  const { count, starts, neighbours } = graph;
  const first = new Int32Array(count + 1);
  for (let a = 0; a < count; a++) {
    let lower = 0;
    for (let i = starts[a] as number; i < (starts[a + 1] as number); i++)
      if ((neighbours[i] as number) < a) lower++;
    first[a + 1] = (first[a] as number) + lower;
  }
  return (one, other) => {
    if (one === other) return 9 * one;
    const a = Math.max(one, other);
    const b = Math.min(one, other);
    for (let i = starts[a] as number; i < (starts[a + 1] as number); i++)
      if (neighbours[i] === b) return 9 * (count + (first[a] as number) + i - (starts[a] as number));
    throw new RangeError(`Nodes ${a} and ${b} do not touch.`);
  };
}
