import type { Graph } from './graph.ts';

/** A set of nodes that are eliminated together, after all its children. */
export interface Parting {
  readonly own: readonly number[];
  readonly children: readonly Parting[];
}

/** Sets of no more nodes than this are not divided: the dense factor of 24 is cheaper than the parting of 24. */
const UNDIVIDED = 24;

/**
 * An order of elimination with little fill: the nodes are halved across their longest extent, those on the border of one half
 * are eliminated after both, and so on (George, 1973, "Nested dissection of a regular finite element mesh", SIAM Journal on
 * Numerical Analysis 10). Where each node lies comes from outside (`places`, `axes` numbers a node); any places give a right
 * order, those of a mesh give a good one.
 */
export function nestedDissection(graph: Graph, places: Float64Array, axes: number): Parting {
  const side = new Int8Array(graph.count);
  return divided(
    graph,
    places,
    axes,
    Array.from({ length: graph.count }, (_, i) => i),
    side,
  );
}

function divided(
  graph: Graph,
  places: Float64Array,
  axes: number,
  nodes: readonly number[],
  side: Int8Array,
): Parting {
  if (nodes.length <= UNDIVIDED) return { own: nodes, children: [] };
  const axis = longestAxis(places, axes, nodes);
  const at = (node: number): number => places[node * axes + axis] as number;
  const sorted = [...nodes].sort((a, b) => at(a) - at(b) || a - b);
  const half = sorted.length >> 1;
  const low = sorted.slice(0, half);
  const high = sorted.slice(half);
  for (const node of low) side[node] = 1;
  for (const node of high) side[node] = 2;
  const lowBorder = low.filter((node) => touches(graph, node, side, 2));
  const highBorder = high.filter((node) => touches(graph, node, side, 1));
  for (const node of nodes) side[node] = 0;
  const border = lowBorder.length <= highBorder.length ? lowBorder : highBorder;
  const parting = new Set(border);
  const children = [low, high]
    .map((part) => part.filter((node) => !parting.has(node)))
    .filter((part) => part.length > 0)
    .map((part) => divided(graph, places, axes, part, side));
  return { own: border, children };
}

function touches(graph: Graph, node: number, side: Int8Array, other: number): boolean {
  for (let i = graph.starts[node] as number; i < (graph.starts[node + 1] as number); i++)
    if (side[graph.neighbours[i] as number] === other) return true;
  return false;
}

function longestAxis(places: Float64Array, axes: number, nodes: readonly number[]): number {
  let longest = 0;
  let most = -1;
  for (let axis = 0; axis < axes; axis++) {
    let low = Infinity;
    let high = -Infinity;
    for (const node of nodes) {
      const at = places[node * axes + axis] as number;
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    if (high - low > most) {
      most = high - low;
      longest = axis;
    }
  }
  return longest;
}
