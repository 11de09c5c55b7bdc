import { boundsMeet, controlBox, grown } from './bounds.ts';
import type { Curve } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { distance, type Point } from './point.ts';
import { split } from './split.ts';
import { COINCIDENCE, LAST_STEP, NARROWEST } from './tolerance.ts';

/** Where two curves cross: the parameter on each, and the place. */
export interface CurveCrossing {
  readonly t: number;
  readonly u: number;
  readonly point: Point;
}

/**
 * Where two curves meet, in order along the first, to rounding; a common end counts. Both are halved as long as the
 * boxes about their control points meet, until they are nearly straight; Newton's method does the rest. Stretches
 * in which two curves coincide have no crossing.
 */
export function curveCrossings(a: Curve, b: Curve): readonly CurveCrossing[] {
  if (!boxesMeet(a, b)) return none;
  const found: CurveCrossing[] = [];
  search({ curve: a, start: 0, end: 1 }, { curve: b, start: 0, end: 1 }, (t, u) => {
    const crossing = polished(a, b, t, u);
    if (crossing && !found.some((other) => same(other, crossing))) found.push(crossing);
  });
  return found.sort((p, q) => p.t - q.t);
}

/** Most curves do not meet. */
const none: readonly CurveCrossing[] = [];

interface CurvePart {
  readonly curve: Curve;
  readonly start: number;
  readonly end: number;
}

/** Control points this near their chord, relative to its length, are straight enough for Newton's method. */
const NEARLY_STRAIGHT = 0.02;

function search(a: CurvePart, b: CurvePart, report: (t: number, u: number) => void): void {
  if (!boxesMeet(a.curve, b.curve)) return;
  const bentA = bend(a);
  const bentB = bend(b);
  if (bentA <= NEARLY_STRAIGHT && bentB <= NEARLY_STRAIGHT) {
    chordsCross(a, b, report);
    return;
  }
  if (bentA >= bentB) for (const half of halves(a)) search(half, b, report);
  else for (const half of halves(b)) search(a, half, report);
}

function halves({ curve, start, end }: CurvePart): readonly CurvePart[] {
  const [before, after] = split(curve, 0.5);
  const middle = (start + end) / 2;
  return [
    { curve: before, start, end: middle },
    { curve: after, start: middle, end },
  ];
}

/** How far the handles stray from the even chord, relative to its length: 0 for a line. */
function bend({ curve, start, end }: CurvePart): number {
  if (curve.kind === 'line' || end - start < NARROWEST) return 0;
  const { from, handle1, handle2, to } = curve;
  const x1 = 3 * handle1.x - 2 * from.x - to.x;
  const y1 = 3 * handle1.y - 2 * from.y - to.y;
  const x2 = 3 * handle2.x - from.x - 2 * to.x;
  const y2 = 3 * handle2.y - from.y - 2 * to.y;
  const stray = Math.sqrt(Math.max(x1 * x1 + y1 * y1, x2 * x2 + y2 * y2)) / 3;
  if (stray <= COINCIDENCE) return 0;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return stray / Math.sqrt(dx * dx + dy * dy);
}

const boxesMeet = (a: Curve, b: Curve): boolean =>
  boundsMeet(controlBox(a), grown(controlBox(b), COINCIDENCE));

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

/** Newton's method on A(t) = B(u); undefined when it leads away from both curves or to no meeting. */
function polished(a: Curve, b: Curve, t0: number, u0: number): CurveCrossing | undefined {
  let t = t0;
  let u = u0;
  for (let step = 0; step < 8; step++) {
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
