import { bernstein, bernsteinSlope } from './bernstein.ts';
import { LAST_STEP, NARROWEST } from './tolerance.ts';

/**
 * The roots in [0, 1], in rising order, of a polynomial given by its Bernstein coefficients, to about 1e-14.
 *
 * Coefficients that change sign once have exactly one root between them, those that do not change sign have none
 * (Descartes' rule in Bernstein form; J. M. Lane and R. F. Riesenfeld, "Bounds on a polynomial", BIT 21, 1981).
 * More changes are settled by halving the interval. A double root is found once. A polynomial that is zero
 * everywhere has no roots worth naming and gives none.
 */
export function rootsBetween01(coefficients: readonly number[]): number[] {
  if (coefficients[0] !== 0 && coefficients[coefficients.length - 1] !== 0) {
    const changes = signChanges(coefficients);
    if (changes === 0) return [];
    if (changes === 1) return [onlyRoot(coefficients)];
  }
  const found: number[] = [];
  collect(coefficients, 0, 1, found);
  return found;
}

function collect(b: readonly number[], t0: number, t1: number, found: number[]): void {
  const first = b[0] ?? 0;
  const last = b.at(-1) ?? 0;
  if (first === 0 && b.some((c) => c !== 0)) add(found, t0);
  const changes = signChanges(b);
  if (changes === 1) add(found, t0 + (t1 - t0) * onlyRoot(b));
  else if (changes > 1 && t1 - t0 < NARROWEST) add(found, (t0 + t1) / 2);
  else if (changes > 1) {
    const mid = (t0 + t1) / 2;
    const [left, right] = halves(b);
    collect(left, t0, mid, found);
    collect(right, mid, t1, found);
  }
  if (last === 0 && b.some((c) => c !== 0)) add(found, t1);
}

function add(found: number[], t: number): void {
  const before = found.at(-1);
  if (before === undefined || t - before > 2 * NARROWEST) found.push(t);
}

function signChanges(b: readonly number[]): number {
  let changes = 0;
  let sign = 0;
  for (let i = 0; i < b.length; i++) {
    const c = b[i] as number;
    if (c === 0) continue;
    const s = c > 0 ? 1 : -1;
    if (sign !== 0 && s !== sign) changes++;
    sign = s;
  }
  return changes;
}

/** The coefficients on both halves of the interval (de Casteljau). */
function halves(b: readonly number[]): readonly [number[], number[]] {
  const left: number[] = [];
  const right = [...b];
  for (let length = b.length; length > 0; length--) {
    left.push(right[0] ?? 0);
    for (let i = 0; i + 1 < length; i++) right[i] = ((right[i] ?? 0) + (right[i + 1] ?? 0)) / 2;
  }
  return [left, right];
}

/**
 * The root of a polynomial whose coefficients change sign once: Newton steps kept inside a shrinking bracket, from where
 * the control polygon crosses zero. A root at an end, where most curves meet, is there at once.
 */
function onlyRoot(b: readonly number[]): number {
  const degree = b.length - 1;
  // Not told by the ends alone: where the polynomial is zero at both, it may still rise or fall between.
  const rises = firstSigned(b) < 0;
  let t = polygonRoot(b);
  if (degree === 1) return t;
  let low = 0;
  let high = 1;
  for (let step = 0; step < 100; step++) {
    const value = bernstein(b, t);
    if (value === 0) return t;
    if (value < 0 === rises) low = t;
    else high = t;
    const next = t - value / bernsteinSlope(b, t);
    // Asked before whether it leads out of the bracket: from the very root, which is one end of it, rounding may.
    if (Math.abs(next - t) <= LAST_STEP || high - low < LAST_STEP) return Math.min(1, Math.max(0, next));
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}

function firstSigned(b: readonly number[]): number {
  for (let i = 0; i < b.length; i++) if (b[i] !== 0) return b[i] as number;
  return 0;
}

/** Where the chain of the points (i / degree, b[i]) crosses zero for the first time. */
function polygonRoot(b: readonly number[]): number {
  const degree = b.length - 1;
  let before = 0;
  for (let i = 1; i <= degree; i++) {
    const from = b[before] ?? 0;
    const to = b[i] ?? 0;
    if (from * to < 0) return (before + ((i - before) * from) / (from - to)) / degree;
    if (to !== 0) before = i;
  }
  return 0.5;
}
