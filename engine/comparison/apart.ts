import type { Curve, Edge } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { distance, type Point } from '../geometry/point.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import { placesAlong } from './laid-piece.ts';

/** The farthest that any place moved, the same share of the length of either line. */
export function farthest(old: Edge, fresh: Edge, lay: Transform): number {
  const to = placesAlong(fresh);
  return Math.max(0, ...placesAlong(old).map((p, i) => distance(lay(p), to[i] ?? lay(p))));
}

/** The farthest that any place of either outline lies from the other; nothing where one of them is not there. */
export function apart(old: readonly Curve[], fresh: readonly Curve[], lay: Transform): number | undefined {
  if (old.length === 0 || fresh.length === 0) return undefined;
  const laid = old.map((curve) => transformedCurve(curve, lay));
  return Math.max(outside(laid, fresh), outside(fresh, laid));
}

const outside = (one: readonly Curve[], other: readonly Curve[]): number =>
  Math.max(...placesOf(one).map((p) => nearestOnEdge({ curves: other }, p).distance));

/** Into so many parts is each curve of an outline divided where it is looked at. */
const PARTS = 8;

const placesOf = (curves: readonly Curve[]): readonly Point[] =>
  curves.flatMap((curve) => Array.from({ length: PARTS }, (_, i) => pointAt(curve, i / PARTS)));
