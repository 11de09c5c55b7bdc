import type { Cubic, Curve } from '../../engine/geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  endDirection,
  pointAlong,
  splitEdgeAt,
  startDirection,
} from '../../engine/geometry/edge.ts';
import { distance, moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { transformedCurve } from '../../engine/geometry/transform.ts';
import { outward, scaled, unit, type Vector, vector } from '../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { Arm } from './arm.ts';
import type { PlainSleeveTable } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';
import { type BelowCap, sleeveHem } from './sleeve-piece.ts';

/**
 * The edges of a plain sleeve below its cap. It tapers, square to the cap at the underarm and upright at the hem, which
 * therefore runs on straight when the seam is sewn, and turns up flat.
 */
export function belowPlainCap(
  { styling }: PlainSleeveTable,
  arm: Arm,
  allowance: BodiceAllowances,
): BelowCap {
  const turnUp = turnUpOf(styling);
  const end = point(arm.hem.value / 2, arm.length.value);
  const hem = sleeveHem(straight(end, mirrored(end)), turnUp);
  const front = frontSeam(arm, end, turnUp);
  const seam = (name: string, curves: readonly Curve[]): PieceEdge =>
    seamEdge(name, curves, allowance.seam, sewingRank.sleeveSeam, 2);
  const edges = arm.elbow
    ? bentEdges(front, hem, seam)
    : [seam('front seam', front), hem, seam('back seam', walkedUpTheBack(front))];
  return { length: arm.length.value, edges, lines: [] };
}

/** What the hem of a plain sleeve is turned up by, mm. */
export const turnUpOf = ({ sleeveHemAllowance: chosen }: PlainSleeveTable['styling']): number =>
  chosen === 'auto' ? rules.plainHem.value : chosen;

const down = vector(0, 1);

/** From the underarm down to the hem, through the width at the elbow where the sleeve goes so far. */
function frontSeam({ width, elbow }: Arm, end: Point, turnUp: number): readonly Curve[] {
  const underarm = point(width.value / 2, 0);
  const upright = point(end.x, end.y - turnUp);
  const last = straight(upright, end);
  if (!elbow) return [leaning(underarm, down, upright, down), ...last];
  const at = point(elbow.width.value / 2, elbow.below.value);
  const along = unit(vector(tapersAtElbow(underarm, at, upright), 1));
  return [leaning(underarm, down, at, along), leaning(at, along, upright, down), ...last];
}

/**
 * What a seam that is upright at both ends tapers by at the elbow, for each mm down: so that it bends alike above and
 * below, as a cubic spline does (de Boor, A Practical Guide to Splines, 1978; from memory), but by no more than three
 * times what it tapers by on average above or below, or it would stand out beyond its ends (Fritsch & Carlson, 1980).
 */
function tapersAtElbow(underarm: Point, elbow: Point, wrist: Point): number {
  const [upper, lower] = [vectorBetween(underarm, elbow), vectorBetween(elbow, wrist)];
  const [above, below] = [upper.x / upper.y, lower.x / lower.y];
  const even = (1.5 * (above * lower.y + below * upper.y)) / (upper.y + lower.y);
  return Math.max(even, 3 * above, 3 * below);
}

/** A cubic between two places with its headings at both. */
function leaning(from: Point, leaves: Vector, to: Point, arrives: Vector): Cubic {
  const third = distance(from, to) / 3;
  return {
    kind: 'cubic',
    from,
    handle1: moved(from, scaled(leaves, third)),
    handle2: moved(to, scaled(arrives, -third)),
    to,
  };
}

/** The seams of a sleeve to the wrist: over the elbow the back stands out, and is eased in to the front. */
function bentEdges(
  front: readonly Curve[],
  hem: PieceEdge,
  seam: (name: string, curves: readonly Curve[]) => PieceEdge,
): readonly PieceEdge[] {
  const [first] = front;
  if (!first) return [hem];
  const toElbow = edgeLength(edgeOf('to the elbow', [first]));
  const stretch = rules.elbowStretch.value;
  const [upper, rest] = splitEdgeAt(edgeOf('front', front), toElbow - stretch, ['upper', 'rest']);
  const [elbow, lower] = splitEdgeAt(rest, 2 * stretch, ['elbow', 'lower']);
  return [
    seam('front seam', upper.curves),
    seam('front seam elbow', elbow.curves),
    seam('front seam lower', lower.curves),
    hem,
    seam('back seam lower', walkedUpTheBack(lower.curves)),
    seam('back seam elbow', standingOut(walkedUpTheBack(elbow.curves))),
    seam('back seam', walkedUpTheBack(upper.curves)),
  ];
}

/** A stretch of the back seam, walked up, that stands out in its middle. */
function standingOut(curves: readonly Curve[]): readonly Curve[] {
  const edge = edgeOf('elbow', curves);
  const middle = pointAlong(edge, edgeLength(edge) / 2);
  const out = moved(middle.point, scaled(outward(middle.direction), rules.elbowOut.value));
  return [
    leaning(edgeStart(edge), startDirection(edge), out, middle.direction),
    leaning(out, middle.direction, edgeEnd(edge), endDirection(edge)),
  ];
}

const mirrored = (p: Point): Point => point(-p.x, p.y);

/** The mirror image of a seam of the front, walked the other way. */
const walkedUpTheBack = (front: readonly Curve[]): readonly Curve[] =>
  front.map((curve) => reversed(transformedCurve(curve, mirrored))).toReversed();
