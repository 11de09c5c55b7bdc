import { flatMapped } from '../flat-mapped.ts';
import { arcLength, parameterAtLength } from './arc-length.ts';
import type { Curve, Edge } from './curve.ts';
import { directionAt, headingAt, pointAt } from './evaluate.ts';
import type { Point } from './point.ts';
import { part, reversed } from './split.ts';
import { ARC_LENGTH, COINCIDENCE } from './tolerance.ts';
import type { Vector } from './vector.ts';

/** A place on an edge: which of its curves, and the parameter on it. */
export interface EdgePlace {
  readonly curve: number;
  readonly t: number;
}

/** An edge of the given curves. Throws a RangeError for none, since such an edge would have no ends. */
export function edgeOf(name: string, curves: readonly Curve[]): Edge {
  if (curves.length === 0) throw new RangeError(`The edge "${name}" needs at least one curve.`);
  return { name, curves };
}

/** Where an edge starts. */
export const edgeStart = (edge: Edge): Point => firstCurve(edge).from;

/** Where an edge ends. */
export const edgeEnd = (edge: Edge): Point => lastCurve(edge).to;

/** The unit heading with which an edge leaves its start. */
export const startDirection = (edge: Edge): Vector => directionAt(firstCurve(edge), 'start');

/** The unit heading with which an edge arrives at its end. */
export const endDirection = (edge: Edge): Vector => directionAt(lastCurve(edge), 'end');

/** Length of an edge (mm) to an absolute accuracy (mm) over all its curves together. */
export function edgeLength(edge: Edge, accuracy: number = ARC_LENGTH): number {
  let sum = 0;
  for (const curve of edge.curves) sum += arcLength(curve, accuracy / edge.curves.length);
  return sum;
}

/**
 * The place `s` mm along an edge from its start, to an accuracy (mm) along the edge. Before the start counts as
 * the start, beyond the end as the end.
 */
export function placeAlong(edge: Edge, s: number, accuracy: number = ARC_LENGTH): EdgePlace {
  const share = accuracy / (edge.curves.length + 1);
  let left = s;
  for (const [index, curve] of edge.curves.entries()) {
    const length = arcLength(curve, share);
    if (left <= length) return { curve: index, t: parameterAtLength(curve, left, share) };
    left -= length;
  }
  return { curve: edge.curves.length - 1, t: 1 };
}

/** The point `s` mm along an edge, and the unit heading of the edge there; accuracy as for `placeAlong`. */
export function pointAlong(
  edge: Edge,
  s: number,
  accuracy: number = ARC_LENGTH,
): { readonly point: Point; readonly direction: Vector } {
  const place = placeAlong(edge, s, accuracy);
  const curve = edge.curves[place.curve] ?? lastCurve(edge);
  return { point: pointAt(curve, place.t), direction: headingAt(curve, place.t) };
}

/** Distance along an edge from its start to a place on it (mm), to an accuracy (mm). */
export function lengthUpTo(edge: Edge, place: EdgePlace, accuracy: number = ARC_LENGTH): number {
  const share = accuracy / edge.curves.length;
  let sum = 0;
  for (const curve of edge.curves.slice(0, place.curve)) sum += arcLength(curve, share);
  const last = edge.curves[place.curve];
  if (last && place.t > 0) sum += arcLength(part(last, 0, place.t), share);
  return sum;
}

/**
 * The two edges into which an edge falls `s` mm from its start, under new names. No sliver of a curve is left
 * beside a joint. Throws a RangeError unless s lies inside the edge.
 */
export function splitEdgeAt(
  edge: Edge,
  s: number,
  names: readonly [string, string],
  accuracy: number = ARC_LENGTH,
): readonly [Edge, Edge] {
  const length = edgeLength(edge, accuracy);
  if (!(s > COINCIDENCE && s < length - COINCIDENCE))
    throw new RangeError(`The edge "${edge.name}" is ${length} mm long and cannot be split at ${s} mm.`);
  return splitEdgeAtPlace(edge, placeAlong(edge, s, accuracy), names);
}

/** The two edges into which an edge falls at a place inside it, under new names; no slivers are left. */
export function splitEdgeAtPlace(
  edge: Edge,
  { curve: index, t }: EdgePlace,
  names: readonly [string, string],
): readonly [Edge, Edge] {
  const curve = edge.curves[index] ?? lastCurve(edge);
  const before = [...edge.curves.slice(0, index), ...worthKeeping(curve, 0, t)];
  const after = [...worthKeeping(curve, t, 1), ...edge.curves.slice(index + 1)];
  return [edgeOf(names[0], before), edgeOf(names[1], after)];
}

/** A part of a curve; whole when the part left out is a sliver, none when the part itself is one. */
function worthKeeping(curve: Curve, t0: number, t1: number): readonly Curve[] {
  const sliver = (a: number, b: number): boolean =>
    a >= b || arcLength(part(curve, a, b), COINCIDENCE / 10) < COINCIDENCE;
  if (sliver(t0, t1)) return [];
  return [part(curve, sliver(0, t0) ? 0 : t0, sliver(t1, 1) ? 1 : t1)];
}

/** The same edge walked from its other end; everything else it carries is kept. */
export const reversedEdge = <E extends Edge>(edge: E): E => ({
  ...edge,
  curves: edge.curves.toReversed().map(reversed),
});

/** One edge of several that follow each other, end to start. */
export const joinedEdges = (name: string, edges: readonly Edge[]): Edge =>
  edgeOf(
    name,
    flatMapped(edges, (edge) => edge.curves),
  );

function firstCurve(edge: Edge): Curve {
  const first = edge.curves[0];
  if (!first) throw new RangeError(`The edge "${edge.name}" has no curves.`);
  return first;
}

function lastCurve(edge: Edge): Curve {
  const last = edge.curves.at(-1);
  if (!last) throw new RangeError(`The edge "${edge.name}" has no curves.`);
  return last;
}
