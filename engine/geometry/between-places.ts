import type { Edge } from './curve.ts';
import { edgeLength, splitEdgeAt } from './edge.ts';
import { COINCIDENCE } from './tolerance.ts';

/**
 * The part of an edge between two distances from its start (mm, from less than to); whole where they are its ends.
 * Throws a RangeError where nothing would be left.
 */
export function betweenPlaces(edge: Edge, from: number, to: number): Edge {
  const upTo = to < edgeLength(edge) - COINCIDENCE ? splitEdgeAt(edge, to, [edge.name, edge.name])[0] : edge;
  return from > COINCIDENCE ? splitEdgeAt(upTo, from, [edge.name, edge.name])[1] : upTo;
}
