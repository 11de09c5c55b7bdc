import Delaunator from 'delaunator';
import Constrainautor from '#constrainautor';
import { placeInPolygon } from '../geometry/in-polygon.ts';
import { point } from '../geometry/point.ts';
import { smoothed } from './smooth.ts';
import type { TriangleMesh } from './triangle-mesh.ts';

/** Points of the filling nearer to the border than this share of the spacing there are left out: they make flat triangles. */
const CLEAR_OF_BORDER = 0.62;

/** Points outside stand so far off the middle of a side, as a share of its length. */
const FENCE = 0.8;

/** Rounds of smoothing, each followed by a new triangulation. More change angles by less than a degree. */
const ROUNDS = 6;

/**
 * Triangles about `spacing` (mm) long in their sides over the inside of a border (flat: x, y ..., clockwise as drawn), whose
 * points and sides stay as they are. Filled with the points of a triangular lattice, triangulated (Delaunay, the border's
 * sides kept: Sloan, 1993, by constrainautor) and smoothed. Angles come out over 20 degrees, save at the border's own
 * sharper corners. Throws a RangeError for a border of less than three points.
 */
export function meshRegion(border: Float64Array, spacing: number): TriangleMesh {
  const borderCount = border.length / 2;
  if (borderCount < 3) throw new RangeError('A border needs at least three points.');
  const polygon = Array.from({ length: borderCount }, (_, i) =>
    point(border[2 * i] as number, border[2 * i + 1] as number),
  );
  const inside = (x: number, y: number): boolean => placeInPolygon(point(x, y), polygon) === 'inside';
  let points = withLattice(border, spacing, inside);
  const fence = fenceAbout(border, inside);
  let triangles = triangulated(points, borderCount, fence, inside);
  for (let round = 0; round < ROUNDS; round++) {
    points = smoothed(points, triangles, borderCount);
    triangles = triangulated(points, borderCount, fence, inside);
  }
  return { points, triangles, borderCount };
}

function withLattice(
  border: Float64Array,
  spacing: number,
  inside: (x: number, y: number) => boolean,
): Float64Array {
  let left = Infinity;
  let right = -Infinity;
  let top = Infinity;
  let bottom = -Infinity;
  for (let i = 0; i < border.length; i += 2) {
    left = Math.min(left, border[i] as number);
    right = Math.max(right, border[i] as number);
    top = Math.min(top, border[i + 1] as number);
    bottom = Math.max(bottom, border[i + 1] as number);
  }
  const found = [...border];
  const rise = (spacing * Math.sqrt(3)) / 2;
  const rows = Math.floor((bottom - top) / rise);
  const first = (bottom - top - rows * rise) / 2;
  for (let row = 0; row <= rows; row++) {
    const y = top + first + row * rise;
    for (let x = left + (row % 2 === 0 ? spacing / 2 : spacing); x < right; x += spacing)
      if (inside(x, y) && distanceToBorder(border, x, y) > CLEAR_OF_BORDER) found.push(x, y);
  }
  return Float64Array.from(found);
}

/**
 * Points outside, beside every side of the border that has room for one. Without them a straight stretch of the border is
 * part of the convex hull, where points out of line by rounding span triangles without area, which cannot be constrained.
 */
function fenceAbout(border: Float64Array, inside: (x: number, y: number) => boolean): readonly number[] {
  const fence: number[] = [];
  const count = border.length / 2;
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const [ax, ay, bx, by] = [border[2 * i], border[2 * i + 1], border[2 * j], border[2 * j + 1]] as [
      number,
      number,
      number,
      number,
    ];
    const x = (ax + bx) / 2 + FENCE * (by - ay);
    const y = (ay + by) / 2 - FENCE * (bx - ax);
    if (!inside(x, y) && distanceToBorder(border, x, y) > CLEAR_OF_BORDER) fence.push(x, y);
  }
  return fence;
}

/** Distance to the nearest side of the border, as a share of that side's own spacing. */
function distanceToBorder(border: Float64Array, x: number, y: number): number {
  let nearest = Infinity;
  const count = border.length / 2;
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const ax = border[2 * i] as number;
    const ay = border[2 * i + 1] as number;
    const dx = (border[2 * j] as number) - ax;
    const dy = (border[2 * j + 1] as number) - ay;
    const square = dx * dx + dy * dy;
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square));
    const away = ((x - ax - t * dx) ** 2 + (y - ay - t * dy) ** 2) / square;
    nearest = Math.min(nearest, away);
  }
  return Math.sqrt(nearest);
}

function triangulated(
  points: Float64Array,
  borderCount: number,
  fence: readonly number[],
  inside: (x: number, y: number) => boolean,
): Int32Array {
  const count = points.length / 2;
  const delaunay = new Delaunator(Float64Array.from([...points, ...fence]));
  const constrained = new Constrainautor(delaunay);
  for (let i = 0; i < borderCount; i++) constrained.constrainOne(i, (i + 1) % borderCount);
  constrained.delaunify(true);
  const kept: number[] = [];
  const { triangles } = delaunay;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t] as number;
    const b = triangles[t + 1] as number;
    const c = triangles[t + 2] as number;
    if (a >= count || b >= count || c >= count) continue;
    const x = ((points[2 * a] as number) + (points[2 * b] as number) + (points[2 * c] as number)) / 3;
    const y =
      ((points[2 * a + 1] as number) + (points[2 * b + 1] as number) + (points[2 * c + 1] as number)) / 3;
    const turn =
      ((points[2 * b] as number) - (points[2 * a] as number)) *
        ((points[2 * c + 1] as number) - (points[2 * a + 1] as number)) -
      ((points[2 * b + 1] as number) - (points[2 * a + 1] as number)) *
        ((points[2 * c] as number) - (points[2 * a] as number));
    if (!inside(x, y)) continue;
    kept.push(a, turn > 0 ? b : c, turn > 0 ? c : b);
  }
  return Int32Array.from(kept);
}
