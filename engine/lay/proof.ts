import { orient2d } from 'robust-predicates';
import { placeInPolygon } from '../geometry/in-polygon.ts';
import type { Point } from '../geometry/point.ts';
import { type Lay, type LayProblem, offRepeat, placedOutline } from './problem.ts';

/** Rounding of a place on a repeat, as a share of the lay's length or width. */
const rounding = 1e-9;

/** What is wrong with a lay: two copies (their places in the list) that overlap, or one that leaves the strip or its repeat. */
export type Fault =
  | { readonly kind: 'overlap'; readonly a: number; readonly b: number }
  | { readonly kind: 'outside'; readonly a: number }
  | { readonly kind: 'off the repeat'; readonly a: number }
  | { readonly kind: 'count'; readonly shape: number };

/**
 * Proves a lay, by exact arithmetic on the corners as they are: every copy is there once, lies inside the strip (its edge
 * counted) and on its repeats, and no two have a point inside both; touching is allowed. Nothing found is a proof.
 */
export function faultsOf(problem: LayProblem, lay: Lay): Fault[] {
  const faults: Fault[] = [];
  for (const [shape, { count }] of problem.shapes.entries()) {
    const copies = lay.placements.filter((placement) => placement.shape === shape);
    const kinds = new Set(copies.map(({ copy }) => copy));
    if (copies.length !== count || kinds.size !== count) faults.push({ kind: 'count', shape });
  }
  for (const [a, placement] of lay.placements.entries()) {
    const shape = problem.shapes[placement.shape];
    if (shape && offRepeat(problem, shape, placement) > rounding * Math.max(lay.length, problem.width))
      faults.push({ kind: 'off the repeat', a });
  }
  const outlines = lay.placements.flatMap((placement) => {
    const shape = problem.shapes[placement.shape];
    return shape ? [placedOutline(shape, placement)] : [];
  });
  const boxes = outlines.map(box);
  for (const [a, outline] of outlines.entries()) {
    const own = boxes[a];
    if (!own) continue;
    if (own.left < 0 || own.right > lay.length || own.top < 0 || own.bottom > problem.width)
      faults.push({ kind: 'outside', a });
    for (let b = a + 1; b < outlines.length; b++) {
      const [other, otherBox] = [outlines[b], boxes[b]];
      if (!other || !otherBox) continue;
      const apart =
        own.left >= otherBox.right ||
        own.right <= otherBox.left ||
        own.top >= otherBox.bottom ||
        own.bottom <= otherBox.top;
      if (!apart && overlap(outline, other)) faults.push({ kind: 'overlap', a, b });
    }
  }
  return faults;
}

/**
 * Whether two simple polygons have an inner point in common; exact for the doubles given, by adaptive predicates
 * (J. R. Shewchuk, Discrete & Computational Geometry 18, 1997). If no edge crosses another within both, they meet at
 * corners only: there the open angles of both must have nothing in common. If they do not, the boundaries do not cross,
 * and one could only lie inside the other.
 */
export function overlap(a: readonly Point[], b: readonly Point[]): boolean {
  const [first, second] = [turning(a), turning(b)];
  return (
    edgesCross(first, second) ||
    cornersShare(first, second) ||
    cornersShare(second, first) ||
    first.some((corner) => placeInPolygon(corner, second) === 'inside') ||
    second.some((corner) => placeInPolygon(corner, first) === 'inside')
  );
}

/** Whether the outline of a polygon meets itself, other than at the corners its edges share; exact. */
export function crossesItself(outline: readonly Point[]): boolean {
  const edges = pairs(outline);
  return edges.some(([p, q], i) =>
    edges.slice(i + 1).some(([r, s], k) => {
      const next = k === 0;
      const last = i === 0 && k === edges.length - 2;
      // Neighbours share a corner: they must not run back over each other.
      if (next || last) {
        const [at, a, b] = next ? [q, p, s] : [p, q, r];
        return sameWay(at, a, b);
      }
      const boxesMeet =
        Math.max(p.x, q.x) >= Math.min(r.x, s.x) &&
        Math.max(r.x, s.x) >= Math.min(p.x, q.x) &&
        Math.max(p.y, q.y) >= Math.min(r.y, s.y) &&
        Math.max(r.y, s.y) >= Math.min(p.y, q.y);
      return boxesMeet && side(p, q, r) * side(p, q, s) <= 0 && side(r, s, p) * side(r, s, q) <= 0;
    }),
  );
}

/** Exactly to which side one must turn from a to b to reach p: 1 from x towards y, -1 the other way, 0 straight on. */
const side = (a: Point, b: Point, p: Point): number => -Math.sign(orient2d(a.x, a.y, b.x, b.y, p.x, p.y));

/** The corners in such a direction that the inside of the polygon lies where `side` is positive. */
function turning(outline: readonly Point[]): readonly Point[] {
  // The lowest corner, and of several the leftmost, is convex: exact, which the sign of a sum would not be.
  let at = 0;
  const corner = (i: number): Point => outline[(i + outline.length) % outline.length] ?? { x: 0, y: 0 };
  for (let i = 1; i < outline.length; i++) {
    const [p, q] = [corner(i), corner(at)];
    if (p.y < q.y || (p.y === q.y && p.x < q.x)) at = i;
  }
  return side(corner(at - 1), corner(at), corner(at + 1)) < 0 ? outline.toReversed() : outline;
}

const pairs = (outline: readonly Point[]): [Point, Point][] =>
  outline.map((from, i) => [from, outline[(i + 1) % outline.length] ?? from]);

function edgesCross(a: readonly Point[], b: readonly Point[]): boolean {
  const others = pairs(b);
  return pairs(a).some(([p, q]) =>
    others.some(
      ([r, s]) =>
        Math.max(p.x, q.x) > Math.min(r.x, s.x) &&
        Math.max(r.x, s.x) > Math.min(p.x, q.x) &&
        Math.max(p.y, q.y) > Math.min(r.y, s.y) &&
        Math.max(r.y, s.y) > Math.min(p.y, q.y) &&
        side(p, q, r) * side(p, q, s) < 0 &&
        side(r, s, p) * side(r, s, q) < 0,
    ),
  );
}

/** Whether the angle at a corner of `a` that lies on the boundary of `b` has a direction in common with the inside of b there. */
function cornersShare(a: readonly Point[], b: readonly Point[]): boolean {
  const count = b.length;
  return a.some((at, i) => {
    const before = a[(i + a.length - 1) % a.length] ?? at;
    const after = a[(i + 1) % a.length] ?? at;
    return b.some((from, j) => {
      const to = b[(j + 1) % count] ?? from;
      if (from.x === at.x && from.y === at.y)
        return anglesShare(at, after, before, to, b[(j + count - 1) % count] ?? from);
      const onEdge =
        side(from, to, at) === 0 &&
        !(to.x === at.x && to.y === at.y) &&
        Math.min(from.x, to.x) <= at.x &&
        at.x <= Math.max(from.x, to.x) &&
        Math.min(from.y, to.y) <= at.y &&
        at.y <= Math.max(from.y, to.y);
      return onEdge && anglesShare(at, after, before, to, from);
    });
  });
}

/** Whether two open angles about a point, each from its first ray on to its second, have a direction in common. */
const anglesShare = (at: Point, a0: Point, a1: Point, b0: Point, b1: Point): boolean =>
  sameWay(at, a0, b0) || within(at, a0, a1, b0) || within(at, b0, b1, a0);

/** Whether two rays from a point run the same way. */
const sameWay = (at: Point, p: Point, q: Point): boolean =>
  side(at, p, q) === 0 &&
  Math.sign(p.x - at.x) === Math.sign(q.x - at.x) &&
  Math.sign(p.y - at.y) === Math.sign(q.y - at.y);

/** Whether a ray lies strictly between a first ray and a second, met when turning on from the first. */
function within(at: Point, first: Point, second: Point, ray: Point): boolean {
  if (sameWay(at, first, ray) || sameWay(at, second, ray)) return false;
  if (sameWay(at, first, second)) return true;
  const turn = side(at, first, second);
  const afterFirst = side(at, first, ray) > 0;
  const beforeSecond = side(at, ray, second) > 0;
  return turn > 0 ? afterFirst && beforeSecond : turn < 0 ? afterFirst || beforeSecond : afterFirst;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const box = (outline: readonly Point[]): Box => ({
  left: Math.min(...outline.map(({ x }) => x)),
  right: Math.max(...outline.map(({ x }) => x)),
  top: Math.min(...outline.map(({ y }) => y)),
  bottom: Math.max(...outline.map(({ y }) => y)),
});
