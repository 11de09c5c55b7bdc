import { hemSide } from '../finishing/hem-side.ts';
import { flatMapped } from '../flat-mapped.ts';
import type { Curve } from '../geometry/curve.ts';
import { edgeEnd, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { moved, type Point } from '../geometry/point.ts';
import { roughLength } from '../geometry/rough-length.ts';
import { SMOOTH_ANGLE } from '../geometry/tolerance.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import { outward, scaled, type Vector } from '../geometry/vector.ts';
import { type SewnDart, shut, shutBack } from '../pattern/dart.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { endsSquare, turnInto } from './corner.ts';
import { type DrawnCurves, drawn } from './nearest.ts';

/** Chords this near their curves, on both sides of an allowance, take little from the bound of 0.05 mm; mm. */
export const FINE = 0.005;

/** Places looked at on a curve lie no farther apart than this, mm. */
const SPACING = 8;

/** And on a straight line, whose parallel can only be wrong altogether or at its ends, mm. */
const SPACING_ON_LINES = 30;

/** An edge with what is needed to measure from it. */
export interface EdgeSide {
  readonly edge: PieceEdge;
  readonly curves: DrawnCurves;
  readonly corners: readonly EdgeCorner[];
  /** The edges beside it that it runs on into without a corner, by their places: one line, whose far corners are its own. */
  readonly runsOn: readonly number[];
  /** How it goes on beyond its ends: over a dart once that is sewn, and through the allowance of a hem. */
  readonly goesOn: readonly Neighbour[];
}

/** An edge beside another, by its curves as they lie there. */
export interface Neighbour {
  readonly edge: PieceEdge;
  readonly curves: DrawnCurves;
}

/** The corner at one end of an edge. */
export interface EdgeCorner {
  readonly at: Point;
  /** The place of the edge it is made with. */
  readonly neighbour: number;
  /** How wide the cutting line must go round the corner, mm. */
  readonly clear: number;
  /** Whether the cloth goes more than half way round it: what lies outside lies outside both its edges. */
  readonly inward: boolean;
  /** Nothing of the edge's own allowance goes beyond the neighbour's seam there. */
  readonly cutsOff: boolean;
  /** The heading of the neighbour's seam, prolonged, and its outward normal, where its allowance ends square. */
  readonly across: { readonly onward: Vector; readonly normal: Vector } | undefined;
}

/** An edge of a piece, by its place, as the cutting line is measured from it. */
export function sideOf(piece: Piece, edge: PieceEdge, i: number, darts: readonly SewnDart[]): EdgeSide {
  const count = piece.edges.length;
  const [first, last] = [(i - 1 + count) % count, (i + 1) % count];
  const before = piece.edges[first] ?? edge;
  const after = piece.edges[last] ?? edge;
  const [mirroredBefore, mirroredAfter] = [hemSide(piece, first), hemSide(piece, i)];
  const beyondBefore = mirroredBefore ?? endDirection(before);
  const beyondAfter = mirroredAfter ?? scaled(startDirection(after), -1);
  const [turnBefore, turnAfter] = [turnInto(before, edge), turnInto(edge, after)];
  return {
    edge,
    curves: drawn(edge.curves, FINE),
    runsOn: [
      ...(Math.abs(turnBefore) < SMOOTH_ANGLE ? [first] : []),
      ...(Math.abs(turnAfter) < SMOOTH_ANGLE ? [last] : []),
    ],
    corners: [
      cornerWith(edge, before, first, edgeStart(edge), turnBefore, beyondBefore, 1),
      cornerWith(edge, after, last, edgeEnd(edge), turnAfter, beyondAfter, -1),
    ],
    goesOn: [
      ...flatMapped(darts, (dart) => [
        ...(dart.before === edge ? [laid(dart.after, shut(dart))] : []),
        ...(dart.after === edge ? [laid(dart.before, shutBack(dart))] : []),
      ]),
      ...(edge.turn === 'seam' && mirroredBefore
        ? [throughHem(edge, edgeStart(edge), mirroredBefore, before)]
        : []),
      ...(edge.turn === 'seam' && mirroredAfter
        ? [throughHem(edge, edgeEnd(edge), mirroredAfter, after)]
        : []),
    ],
  };
}

/** A seam as it goes on from its end through the allowance of a hem. */
const throughHem = (edge: PieceEdge, at: Point, onward: Vector, hem: PieceEdge): Neighbour => ({
  edge,
  curves: drawn([{ kind: 'line', from: at, to: moved(at, scaled(onward, hem.allowance)) }], FINE),
});

const laid = (edge: PieceEdge, to: Transform): Neighbour => ({
  edge,
  curves: drawn(
    edge.curves.map((curve) => transformedCurve(curve, to)),
    FINE,
  ),
});

/** The corner of an edge with the neighbour before it (1) or after it (-1), whose seam goes on beyond it `onward`. */
function cornerWith(
  edge: PieceEdge,
  neighbour: PieceEdge,
  place: number,
  at: Point,
  turn: number,
  onward: Vector,
  sense: 1 | -1,
): EdgeCorner {
  const clear = Math.min(edge.allowance, neighbour.allowance);
  const isAcross = neighbour.turn === 'dart' || endsSquare(neighbour, edge, turn);
  return {
    at,
    neighbour: place,
    clear,
    inward: turn < 0,
    cutsOff: clear === 0 || edge.turn === 'hem',
    across: isAcross ? { onward, normal: scaled(outward(onward), sense) } : undefined,
  };
}

/** How many even steps of its parameter lead along a curve, none longer than the spacing. */
export const stepsAlong = (curve: Curve): number =>
  Math.max(1, Math.ceil(roughLength(curve) / (curve.kind === 'line' ? SPACING_ON_LINES : SPACING)));
