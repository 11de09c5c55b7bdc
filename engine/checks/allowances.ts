import { MOST_RUN_OUT } from '../finishing/run-out.ts';
import { flatMapped } from '../flat-mapped.ts';
import { type Bounds, boundsMeet, controlBox, grown } from '../geometry/bounds.ts';
import { evenPoints } from '../geometry/chords.ts';
import type { Edge } from '../geometry/curve.ts';
import { writePlaceAt } from '../geometry/evaluate.ts';
import { distance, type Point, point, vectorBetween } from '../geometry/point.ts';
import { dot, outward } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import { sewnDarts } from '../pattern/dart.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { roomForNumbers } from '../room-for-numbers.ts';
import { inMm } from '../text/figure.ts';
import { isBeyond, runsOut } from './beyond-corner.ts';
import { type EdgeSide, FINE, type Neighbour, sideOf, stepsAlong } from './edge-side.ts';
import {
  boxOf,
  type DrawnCurves,
  drawn,
  isNear,
  type NearestPlace,
  nearest,
  whichIsNear,
} from './nearest.ts';

/**
 * A place whose nearest lies this near to the end of an edge belongs to the corner, mm: square to the end of a
 * curve, chords that stray 0.005 mm lead some tenths aside at 20 mm distance.
 */
const CORNER = 0.5;

/** Places along a curve of the cutting line from its start to its end, flat: x, y, x, y ..., and a box about it. */
interface CutLineStretch {
  readonly places: readonly number[];
  readonly box: Bounds;
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
  const cutCurves = drawn(cut.curves, FINE);
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
  cut: DrawnCurves,
  bound: number,
): number[] {
  const { allowance } = side.edge;
  const asOne = [side, ...flatMapped(side.runsOn, (i) => sides[i] ?? [])];
  const corners = flatMapped(asOne, (each) => each.corners);
  const line = asOne.map(({ curves }) => curves);
  const others: readonly Neighbour[] = [...sides, ...side.goesOn];
  const found: number[] = [];
  const place = roomForNumbers(4);
  // One place after the other has the same stretch of the cutting line beside it.
  let beside = 0;
  for (const curve of side.edge.curves) {
    // Its ends belong to corners or to the next curve.
    const count = stepsAlong(curve);
    for (let i = 0; i < count; i++) {
      writePlaceAt(curve, (i + 0.5) / count, place, 0);
      const x = place[0] as number;
      const y = place[1] as number;
      const outX = x + allowance * (place[3] as number);
      const outY = y - allowance * (place[2] as number);
      const near = whichIsNear(cut, outX, outY, bound, beside);
      if (near >= 0) {
        beside = near;
        continue;
      }
      const out = point(outX, outY);
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
  const reach = grown(boxOf(side.curves), least);
  const found: number[] = [];
  for (const { places, box } of cut) {
    if (!boundsMeet(box, reach)) continue;
    for (let i = 0; i < places.length; i += 2) {
      const x = places[i] as number;
      const y = places[i + 1] as number;
      if (x < reach.left || x > reach.right || y < reach.top || y > reach.bottom) continue;
      // Hardly any place is nearer, and to say where it would be makes objects for all.
      if (whichIsNear(side.curves, x, y, least, 0) < 0) continue;
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
  const outside = liesOutside(near, p);
  const besideOutside = beside ? liesOutside(beside, p) : outside;
  if (corner.inward ? !(outside && besideOutside) : !(outside || besideOutside)) return false;
  return near.distance < corner.clear - bound;
}

const liesOutside = ({ at, heading }: NearestPlace, p: Point): boolean =>
  dot(outward(heading), vectorBetween(at, p)) > 0;

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
