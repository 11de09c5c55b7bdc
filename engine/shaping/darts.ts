import type { Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { isStraight } from '../geometry/inflections.ts';
import { between, distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { PieceEdge } from '../pattern/piece.ts';

/** A dart cut out of an outline: two legs of one length that meet at its apex. */
export interface Dart {
  /** The edges that are its legs, clockwise. */
  readonly legs: readonly [PieceEdge, PieceEdge];
  readonly apex: Point;
  /** Angle between the legs, radians. */
  readonly angle: number;
  /** Length of the legs, mm. */
  readonly leg: number;
  /** Width at the mouth, mm: 2 leg sin(angle / 2) where the legs are equal. */
  readonly intake: number;
}

/** Legs may differ by so much and still be sewn together, mm, for a traced dart. */
export const UNEQUAL = 3;

/** Wider than this it is no dart but the shape of the piece, radians. */
const WIDEST = (100 * Math.PI) / 180;

/** A leg may bend this far from straight, mm: legs are often curved a little. */
const BEND = 6;

/** The darts of an outline: where it turns inward between two nearly straight edges of one length. */
export const dartsOf = (outline: readonly PieceEdge[]): readonly Dart[] =>
  pairedLegs(outline).filter(({ legs }) => differenceOf(legs) <= UNEQUAL);

/** What would be a dart, had its legs one length. */
export interface UnequalDart {
  readonly legs: readonly [PieceEdge, PieceEdge];
  /** mm */
  readonly difference: number;
}

/**
 * Where an outline turns inward between two nearly straight edges of almost one length, the likeliest first. One half
 * as long again as the other is no leg of it.
 */
export const unequalDartsOf = (outline: readonly PieceEdge[]): readonly UnequalDart[] =>
  pairedLegs(outline)
    .map(({ legs }) => ({ legs, difference: differenceOf(legs) }))
    .filter(({ legs, difference }) => difference > UNEQUAL && difference < edgeLength(legs[0]) / 2)
    .toSorted((a, b) => a.difference - b.difference);

const differenceOf = ([one, other]: Dart['legs']): number => Math.abs(edgeLength(one) - edgeLength(other));

function pairedLegs(outline: readonly PieceEdge[]): readonly Dart[] {
  return outline.flatMap((first, i) => {
    const second = outline[(i + 1) % outline.length];
    if (!second || second === first || ![first, second].every(nearlyStraight)) return [];
    const apex = edgeEnd(first);
    const [a, b] = [vectorBetween(apex, edgeStart(first)), vectorBetween(apex, edgeEnd(second))];
    const angle = Math.atan2(cross(a, b), dot(a, b));
    const inward = cross(endDirection(first), startDirection(second)) < 0;
    if (!inward || !(angle > 0 && angle < WIDEST)) return [];
    const leg = (edgeLength(first) + edgeLength(second)) / 2;
    return [{ legs: [first, second], apex, angle, leg, intake: Math.hypot(a.x - b.x, a.y - b.y) }];
  });
}

const nearlyStraight = (edge: Edge): boolean => edge.curves.every((curve) => isStraight(curve, BEND));

/** A dart's point lies so far short of the place it was pivoted about, mm: 3/4 in, as sewing lessons have it. */
export const SHORT = 19;

/**
 * The outline with the points of all darts that meet at a place drawn back by `short` mm along their middle lines,
 * legs straight; each mouth stays as it was. Darts pivoted apart share one point, which would leave the cloth
 * hanging together by a thread there.
 */
export function drawnShort(outline: readonly PieceEdge[], at: Point, short: number): readonly PieceEdge[] {
  const redrawn = new Map<PieceEdge, PieceEdge>();
  for (const { legs, apex, leg, angle } of dartsOf(outline)) {
    if (distance(apex, at) > COINCIDENCE) continue;
    const [from, to] = [edgeStart(legs[0]), edgeEnd(legs[1])];
    const share = Math.min(short / (leg * Math.cos(angle / 2)), LEAST_LEFT);
    const point = between(apex, between(from, to, 0.5), share);
    redrawn.set(legs[0], { ...legs[0], curves: [{ kind: 'line', from, to: point }] });
    redrawn.set(legs[1], { ...legs[1], curves: [{ kind: 'line', from: point, to }] });
  }
  return outline.map((edge) => redrawn.get(edge) ?? edge);
}

/** At least a tenth of a dart is left, however short it is drawn. */
const LEAST_LEFT = 0.9;
