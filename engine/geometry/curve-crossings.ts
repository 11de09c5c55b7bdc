import type { Curve } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { split } from './split.ts';
import { COINCIDENCE, LAST_STEP, NARROWEST } from './tolerance.ts';
import { cross } from './vector.ts';

/** Where two curves cross: the parameter on each, and the place. */
export interface CurveCrossing {
  readonly t: number;
  readonly u: number;
  readonly point: Point;
}

/**
 * Where two curves meet, in order along the first, to rounding; a common end counts. Both are halved as long as the
 * boxes about their control points meet, until they are nearly straight and can meet once at most, or stray by less than
 * 0.001 mm; Newton's method does the rest. So no curve lies farther than that beyond another unseen. Stretches
 * in which two curves coincide have no crossing.
 */
export function curveCrossings(a: Curve, b: Curve): readonly CurveCrossing[] {
  if (!boxesMeet(a, b) || coincide(a, b)) return none;
  const found: CurveCrossing[] = [];
  search({ curve: a, start: 0, end: 1 }, { curve: b, start: 0, end: 1 }, (t, u) => {
    const crossing = polished(a, b, t, u);
    if (crossing && !found.some((other) => same(other, crossing))) found.push(crossing);
  });
  return found.sort((p, q) => p.t - q.t);
}

/** Whether one is the other, or that drawn backwards: the most that there is to search, for nothing. */
function coincide(a: Curve, b: Curve): boolean {
  const [handle1, handle2] = b.kind === 'line' ? [b.from, b.to] : [b.handle1, b.handle2];
  return (
    a.kind === b.kind &&
    (isThrough(a, b.from, handle1, handle2, b.to) || isThrough(a, b.to, handle2, handle1, b.from))
  );
}

const isThrough = (curve: Curve, from: Point, handle1: Point, handle2: Point, to: Point): boolean =>
  isAt(curve.from, from) &&
  isAt(curve.to, to) &&
  (curve.kind === 'line' || (isAt(curve.handle1, handle1) && isAt(curve.handle2, handle2)));

const isAt = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** Most curves do not meet. */
const none: readonly CurveCrossing[] = [];

interface CurvePart {
  readonly curve: Curve;
  readonly start: number;
  readonly end: number;
}

/** Control points this near their chord, relative to its length, are straight enough for Newton's method. */
const NEARLY_STRAIGHT = 0.02;

/**
 * Curves that stray no farther from their chords than this, mm, are taken for these: so deep, and no deeper, one may lie
 * beyond another unseen. A fiftieth of what a seam is walked to; smaller, curves that coincide take long.
 */
const UNSEEN = 1e-3;

function search(a: CurvePart, b: CurvePart, report: (t: number, u: number) => void): void {
  if (!boxesMeet(a.curve, b.curve)) return;
  const [strayA, strayB] = [stray(a), stray(b)];
  const bentA = relative(strayA, a.curve);
  const bentB = relative(strayB, b.curve);
  if (bentA <= NEARLY_STRAIGHT && bentB <= NEARLY_STRAIGHT) {
    if (meetAsChords(a.curve, b.curve, strayA + strayB) || (strayA <= UNSEEN && strayB <= UNSEEN)) {
      chordsCross(a, b, report);
      return;
    }
    // Side by side they may cross twice, or not at all.
    if (areApart(a.curve, b.curve) || areApart(b.curve, a.curve)) return;
    if (strayA >= strayB) for (const half of halves(a)) search(half, b, report);
    else for (const half of halves(b)) search(a, half, report);
    return;
  }
  if (bentA >= bentB) for (const half of halves(a)) search(half, b, report);
  else for (const half of halves(b)) search(a, half, report);
}

/** So far, as a share of the shorter one, the place where two curves meet may lie from that where their chords do. */
const DISPLACED = 0.1;

/**
 * Whether two curves that stray so far from their chords, mm, together, meet just where these do, or not at all: every heading
 * of one lies to the same side of every heading of the other, so that they part after they have met, and by an angle at which
 * straying moves that place but little.
 */
function meetAsChords(a: Curve, b: Curve, strayed: number): boolean {
  const [own, others] = [controlPoints(a), controlPoints(b)];
  let sign = 0;
  // All headings of a curve lie between those of the legs of its control polygon.
  for (let i = 1; i < own.length; i++)
    for (let j = 1; j < others.length; j++) {
      const turn = Math.sign(
        turnOf(own[i - 1] as Point, own[i] as Point, others[j - 1] as Point, others[j] as Point),
      );
      if (turn === 0 || turn === -sign) return false;
      sign = turn;
    }
  if (strayed === 0) return true;
  const [chord, across] = [vectorBetween(a.from, a.to), vectorBetween(b.from, b.to)];
  const longer = Math.max(Math.hypot(chord.x, chord.y), Math.hypot(across.x, across.y));
  // The sine of their angle, times the length of the shorter.
  return strayed * longer <= DISPLACED * Math.abs(cross(chord, across));
}

/** Whether all of `b` lies on one side of the band along the chord of `a` in which all of that lies. */
function areApart(a: Curve, b: Curve): boolean {
  const { from, to } = a;
  const room = COINCIDENCE * Math.hypot(to.x - from.x, to.y - from.y);
  let [least, most] = [Infinity, -Infinity];
  for (const p of controlPoints(a)) {
    const off = turnOf(from, to, from, p);
    least = Math.min(least, off);
    most = Math.max(most, off);
  }
  let [above, below] = [true, true];
  for (const p of controlPoints(b)) {
    const off = turnOf(from, to, from, p);
    above &&= off > most + room;
    below &&= off < least - room;
  }
  return above || below;
}

/** The cross product of the ways from `a` to `b` and from `c` to `d`. */
const turnOf = (a: Point, b: Point, c: Point, d: Point): number =>
  (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);

const controlPoints = (curve: Curve): readonly Point[] =>
  curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to];

function halves({ curve, start, end }: CurvePart): readonly CurvePart[] {
  const [before, after] = split(curve, 0.5);
  const middle = (start + end) / 2;
  return [
    { curve: before, start, end: middle },
    { curve: after, start: middle, end },
  ];
}

/** How far the handles stray from the even chord, mm: 0 for a line. */
function stray({ curve, start, end }: CurvePart): number {
  if (curve.kind === 'line' || end - start < NARROWEST) return 0;
  const { from, handle1, handle2, to } = curve;
  const x1 = 3 * handle1.x - 2 * from.x - to.x;
  const y1 = 3 * handle1.y - 2 * from.y - to.y;
  const x2 = 3 * handle2.x - from.x - 2 * to.x;
  const y2 = 3 * handle2.y - from.y - 2 * to.y;
  const far = Math.sqrt(Math.max(x1 * x1 + y1 * y1, x2 * x2 + y2 * y2)) / 3;
  return far <= COINCIDENCE ? 0 : far;
}

const relative = (far: number, { from, to }: Curve): number => (far === 0 ? 0 : far / distance(from, to));

/** Whether the boxes about the control points of two curves meet, or all but: axis by axis, for most are told by one. */
function boxesMeet(a: Curve, b: Curve): boolean {
  const ofLine = a.kind === 'line';
  const [p, q, r, s] = [a.from, ofLine ? a.from : a.handle1, ofLine ? a.to : a.handle2, a.to];
  const toLine = b.kind === 'line';
  const [t, u, v, w] = [b.from, toLine ? b.from : b.handle1, toLine ? b.to : b.handle2, b.to];
  return (
    Math.min(p.x, q.x, r.x, s.x) <= Math.max(t.x, u.x, v.x, w.x) + COINCIDENCE &&
    Math.min(t.x, u.x, v.x, w.x) - COINCIDENCE <= Math.max(p.x, q.x, r.x, s.x) &&
    Math.min(p.y, q.y, r.y, s.y) <= Math.max(t.y, u.y, v.y, w.y) + COINCIDENCE &&
    Math.min(t.y, u.y, v.y, w.y) - COINCIDENCE <= Math.max(p.y, q.y, r.y, s.y)
  );
}

/** Least coordinate of a curve's control points. */
export const least = (curve: Curve, axis: 'x' | 'y'): number =>
  curve.kind === 'line'
    ? Math.min(curve.from[axis], curve.to[axis])
    : Math.min(curve.from[axis], curve.handle1[axis], curve.handle2[axis], curve.to[axis]);

/** Greatest coordinate of a curve's control points. */
export const most = (curve: Curve, axis: 'x' | 'y'): number =>
  curve.kind === 'line'
    ? Math.max(curve.from[axis], curve.to[axis])
    : Math.max(curve.from[axis], curve.handle1[axis], curve.handle2[axis], curve.to[axis]);

/** Reports where two chords, each lengthened a little, cross; parallel ones do not. */
function chordsCross(a: CurvePart, b: CurvePart, report: (t: number, u: number) => void): void {
  const p = a.curve.from;
  const q = b.curve.from;
  const dx = a.curve.to.x - p.x;
  const dy = a.curve.to.y - p.y;
  const ex = b.curve.to.x - q.x;
  const ey = b.curve.to.y - q.y;
  const det = dx * ey - dy * ex;
  if (det === 0) return;
  const s = ((q.x - p.x) * ey - (q.y - p.y) * ex) / det;
  const v = ((q.x - p.x) * dy - (q.y - p.y) * dx) / det;
  const near = (x: number): boolean => x > -0.25 && x < 1.25;
  if (near(s) && near(v)) report(a.start + (a.end - a.start) * s, b.start + (b.end - b.start) * v);
}

/** Near a touch the method converges slowly. */
const STEPS = 24;

/** Newton's method on A(t) = B(u); undefined when it leads away from both curves or to no meeting. */
function polished(a: Curve, b: Curve, t0: number, u0: number): CurveCrossing | undefined {
  let t = t0;
  let u = u0;
  for (let step = 0; step < STEPS; step++) {
    const p = pointAt(a, t);
    const q = pointAt(b, u);
    const d = derivativeAt(a, t);
    const e = derivativeAt(b, u);
    const det = d.x * e.y - d.y * e.x;
    if (det === 0) break;
    const x = q.x - p.x;
    const y = q.y - p.y;
    const dt = (x * e.y - y * e.x) / det;
    const du = (x * d.y - y * d.x) / det;
    t += dt;
    u += du;
    if (Math.abs(dt) + Math.abs(du) < LAST_STEP) break;
  }
  const onA = clamped(a, t);
  const onB = clamped(b, u);
  if (onA === undefined || onB === undefined) return undefined;
  const point = pointAt(a, onA);
  return distance(point, pointAt(b, onB)) <= COINCIDENCE ? { t: onA, u: onB, point } : undefined;
}

/** A parameter brought back to the nearest end if it lies beyond it by no more than a coincidence. */
function clamped(curve: Curve, t: number): number | undefined {
  if (t >= 0 && t <= 1) return t;
  if (!(t > -0.1 && t < 1.1)) return undefined;
  const end = t < 0 ? 0 : 1;
  return distance(pointAt(curve, t), pointAt(curve, end)) <= COINCIDENCE ? end : undefined;
}

/** Crossings at one place are one where their parameters differ by less than this; a loop passes a place twice. */
const SAME_PASS = 1e-3;

const same = (a: CurveCrossing, b: CurveCrossing): boolean =>
  distance(a.point, b.point) <= COINCIDENCE &&
  Math.abs(a.t - b.t) < SAME_PASS &&
  Math.abs(a.u - b.u) < SAME_PASS;
