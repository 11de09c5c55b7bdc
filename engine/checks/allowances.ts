import { hemSide } from '../finishing/hem-side.ts';
import { MOST_RUN_OUT, RUN_OUT_REACH } from '../finishing/run-out.ts';
import { flatMapped } from '../flat-mapped.ts';
import { type Bounds, boundsAbout, boundsMeet, controlBox, grown } from '../geometry/bounds.ts';
import { evenPoints } from '../geometry/chords.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { headingAt, pointAt } from '../geometry/evaluate.ts';
import { distance, moved, type Point, point, vectorBetween } from '../geometry/point.ts';
import { roughLength } from '../geometry/rough-length.ts';
import { COINCIDENCE, SMOOTH_ANGLE } from '../geometry/tolerance.ts';
import { type Transform, transformedCurve } from '../geometry/transform.ts';
import { dot, outward, scaled, type Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import { type SewnDart, sewnDarts, shut, shutBack } from '../pattern/dart.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';
import { endsSquare, turnInto } from './corner.ts';
import { type DrawnStretch, drawn, isNear, type NearestPlace, nearest, whichIsNear } from './nearest.ts';

/** Chords this near their curves, on both sides of an allowance, take little from the bound of 0.05 mm; mm. */
const FINE = 0.005;

/**
 * A place whose nearest lies this near to the end of an edge belongs to the corner, mm: square to the end of a
 * curve, chords that stray 0.005 mm lead some tenths aside at 20 mm distance.
 */
const CORNER = 0.5;

/** Places looked at on a curve lie no farther apart than this, mm. */
const SPACING = 8;

/** And on a straight line, whose parallel can only be wrong altogether or at its ends, mm. */
const SPACING_ON_LINES = 30;

/** An edge with what is needed to measure from it. */
interface EdgeSide {
  readonly edge: PieceEdge;
  readonly curves: readonly DrawnStretch[];
  /** Places along each of its curves with the outward normal there, flat: x, y of the place, x, y of the normal ... */
  readonly places: readonly (readonly number[])[];
  readonly corners: readonly EdgeCorner[];
  /** The edges beside it that it runs on into without a corner, by their places: one line, whose far corners are its own. */
  readonly runsOn: readonly number[];
  /** How it goes on beyond its ends: over a dart once that is sewn, and through the allowance of a hem. */
  readonly goesOn: readonly Neighbour[];
}

/** An edge beside another, by its curves as they lie there. */
interface Neighbour {
  readonly edge: PieceEdge;
  readonly curves: readonly DrawnStretch[];
}

/** Places along a curve of the cutting line from its start to its end, flat: x, y, x, y ..., and a box about it. */
interface CutLineStretch {
  readonly places: readonly number[];
  readonly box: Bounds;
}

/** The corner at one end of an edge. */
interface EdgeCorner {
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

/**
 * Measures a piece's cutting line against its stitching line, at places no more than 8 mm apart along curves, on both. From
 * the stitching line: one allowance out, the cutting line must be there; unless a hollow or an inward corner
 * takes the place, or, beside a blunt corner, the allowance of the seam that runs through is wider for it.
 * From the cutting line: no place beside an edge may be nearer to it than its allowance, no place around a
 * corner nearer to it than the narrower of the two. Edges beside a dart are measured up to its seam, prolonged, as
 * they lie when it is sewn; its legs, inside the cutting line, are not. One issue an edge, for its worst place.
 */
export function allowanceFaults(piece: Piece, cut: Edge, bound: number): Issue[] {
  const darts = sewnDarts(piece.edges);
  const sides = piece.edges.map((edge, i) => sideOf(piece, edge, i, darts));
  const cutCurves = flatMapped(cut.curves, (curve) => drawn(curve, FINE));
  const cutPlaces = cut.curves.map((curve): CutLineStretch => {
    return { places: evenPoints(curve, stepsAlong(curve)), box: controlBox(curve) };
  });
  return flatMapped(sides, (side) => {
    if (side.edge.turn === 'dart') return [];
    const found = [
      ...fromStitching(side, sides, cutCurves, bound),
      ...fromCutting(side, sides, cutPlaces, bound),
    ];
    if (found.length === 0) return [];
    const off = (value: number): number => Math.abs(value - side.edge.allowance);
    return [
      fault(
        piece,
        side.edge,
        found.reduce((a, b) => (off(b) > off(a) ? b : a)),
        bound,
      ),
    ];
  });
}

/** Widths found where the cutting line is not one allowance out from the edge. */
function fromStitching(
  side: EdgeSide,
  sides: readonly EdgeSide[],
  cut: readonly DrawnStretch[],
  bound: number,
): number[] {
  const { allowance } = side.edge;
  const asOne = [side, ...flatMapped(side.runsOn, (i) => sides[i] ?? [])];
  const corners = flatMapped(asOne, (each) => each.corners);
  const line = flatMapped(asOne, (each) => each.curves);
  const others: readonly Neighbour[] = [...sides, ...side.goesOn];
  const found: number[] = [];
  // One place after the other has the same stretch of the cutting line beside it.
  let beside = 0;
  for (const places of side.places) {
    for (let i = 0; i < places.length; i += 4) {
      const x = places[i] as number;
      const y = places[i + 1] as number;
      const out = point(x + allowance * (places[i + 2] as number), y + allowance * (places[i + 3] as number));
      const near = whichIsNear(cut, out, bound, beside);
      if (near !== undefined) {
        beside = near;
        continue;
      }
      if (corners.some((corner) => isBeyond(corner, out))) continue;
      if (others.some((other) => isNear(other.curves, out, other.edge.allowance - 2 * FINE))) continue;
      const there = nearest(cut, out, MOST_RUN_OUT * allowance);
      if (there && corners.some((corner) => runsOut(corner, there.chord, line, allowance, bound))) continue;
      found.push(nearest(cut, point(x, y), Number.POSITIVE_INFINITY)?.distance ?? 0);
    }
  }
  return found;
}

/** Distances of places on the cutting line that are too near to the edge, or to a corner it makes with the next. */
function fromCutting(
  side: EdgeSide,
  sides: readonly EdgeSide[],
  cut: readonly CutLineStretch[],
  bound: number,
): number[] {
  const least = side.edge.allowance - bound;
  if (least <= 0) return [];
  const reach = grown(boundsAbout(side.curves.map(({ box }) => box)), least);
  const found: number[] = [];
  for (const { places, box } of cut) {
    if (!boundsMeet(box, reach)) continue;
    for (let i = 0; i < places.length; i += 2) {
      const x = places[i] as number;
      const y = places[i + 1] as number;
      if (x < reach.left || x > reach.right || y < reach.top || y > reach.bottom) continue;
      const p = point(x, y);
      const near = nearest(side.curves, p, least);
      if (near && isTooNear(side, sides, near, p, bound)) found.push(near.distance);
    }
  }
  return found;
}

/** Whether a place on the cutting line, nearer to an edge than its allowance, may not be there. */
function isTooNear(
  side: EdgeSide,
  sides: readonly EdgeSide[],
  near: NearestPlace,
  p: Point,
  bound: number,
): boolean {
  // A fold cuts the allowance off along its line: the rest is on the other layer. A hem ends where its seams go on.
  if (side.corners.some((corner) => corner.cutsOff && isBeyond(corner, p))) return false;
  const corner = side.corners.find(({ at }) => distance(at, near.at) <= CORNER);
  if (!corner) return liesOutside(near, p);
  // Beside the neighbour it is for the neighbour to say.
  const next = sides[corner.neighbour];
  const beside = next && nearest(next.curves, p, Number.POSITIVE_INFINITY);
  if (beside && distance(beside.at, corner.at) > CORNER) return false;
  // A narrow band has the cutting line of its other side as near.
  const outside = [near, ...(beside ? [beside] : [])].map((edge) => liesOutside(edge, p));
  if (corner.inward ? !outside.every(Boolean) : !outside.some(Boolean)) return false;
  return near.distance < corner.clear - bound;
}

const liesOutside = ({ at, heading }: NearestPlace, p: Point): boolean =>
  dot(outward(heading), vectorBetween(at, p)) > 0;

function sideOf(piece: Piece, edge: PieceEdge, i: number, darts: readonly SewnDart[]): EdgeSide {
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
    curves: flatMapped(edge.curves, (curve) => drawn(curve, FINE)),
    places: edge.curves.map(places),
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
  curves: drawn({ kind: 'line', from: at, to: moved(at, scaled(onward, hem.allowance)) }, FINE),
});

const laid = (edge: PieceEdge, to: Transform): Neighbour => ({
  edge,
  curves: flatMapped(edge.curves, (curve) => drawn(transformedCurve(curve, to), FINE)),
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

/**
 * Whether the cutting line is wider here since an end that was lengthened for its neighbour runs out (`runOut`): straight
 * from the neighbour's seam, prolonged, to where the allowance of this line is kept again.
 */
function runsOut(
  { at, across }: EdgeCorner,
  chord: NearestPlace['chord'],
  line: readonly DrawnStretch[],
  allowance: number,
  bound: number,
): boolean {
  if (!across || distance(...chord) > RUN_OUT_REACH * allowance) return false;
  const begins = chord.findIndex((p) => {
    const away = vectorBetween(at, p);
    return dot(away, across.onward) >= 0 && Math.abs(dot(away, across.normal)) <= bound;
  });
  const ends = chord[1 - begins];
  return ends !== undefined && isNear(line, ends, allowance + bound);
}

/** Whether a place lies where the neighbour's square end takes over: outside its seam, prolonged (`turnCorner`). */
function isBeyond({ at, across }: EdgeCorner, p: Point): boolean {
  if (!across) return false;
  const away = vectorBetween(at, p);
  return dot(away, across.onward) >= 0 && dot(away, across.normal) > -COINCIDENCE;
}

/** Places inside a curve and the normals there, flat; its ends belong to corners or to the next curve. */
function places(curve: Curve): readonly number[] {
  const count = stepsAlong(curve);
  const all = new Array<number>(4 * count);
  for (let i = 0; i < count; i++) {
    const t = (i + 0.5) / count;
    const { x, y } = pointAt(curve, t);
    const normal = outward(headingAt(curve, t));
    all[4 * i] = x;
    all[4 * i + 1] = y;
    all[4 * i + 2] = normal.x;
    all[4 * i + 3] = normal.y;
  }
  return all;
}

/** How many even steps of its parameter lead along a curve, none longer than the spacing. */
const stepsAlong = (curve: Curve): number =>
  Math.max(1, Math.ceil(roughLength(curve) / (curve.kind === 'line' ? SPACING_ON_LINES : SPACING)));

function fault(piece: Piece, edge: PieceEdge, found: number, bound: number): Issue {
  return {
    code: 'allowance-not-kept',
    severity: 'error',
    path: `${piece.name}/${edge.name}`,
    message:
      `The cutting line of ${piece.name} is not ${inMm(edge.allowance)} away from the edge "${edge.name}" ` +
      `everywhere: at its worst place it is ${inMm(found)}.`,
    value: found,
    limits: { min: edge.allowance - bound, max: edge.allowance + bound, unit: 'mm' },
  };
}
