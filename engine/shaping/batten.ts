import type { Cubic } from '../geometry/curve.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import { scaled, unit, type Vector } from '../geometry/vector.ts';
import { bandedSolution } from './banded.ts';
import { LET_GO } from './leading-places.ts';

/** The headings a line has to keep at its ends. */
export interface Ends {
  readonly start: Vector;
  readonly end: Vector;
}

/**
 * The line a draughtsman's batten takes: clamped at the first and last place under the given headings and held at
 * every place between by a spring, it makes the sum of squared distances from the places plus its bending energy
 * least (I. J. Schoenberg, "Spline functions and the problem of graduation", 1964; C. H. Reinsch, "Smoothing by
 * spline functions", 1967). `reach` is the length (mm) over which it evens out a bump: 0 goes through every
 * place, and with growing reach it comes to swing from end to end in one. Parametrised by the chords, cubic from
 * place to place. Exact, up to rounding. `thin` is how stiff it is within `LET_GO` of its ends, as a share of its
 * stiffness between: at 1 it is curvature-continuous (C2), below it is so but for the two places where it thickens.
 */
export function batten(places: readonly Point[], ends: Ends, reach: number, thin = 1): readonly Cubic[] {
  const held = apart(places);
  const spans = held.slice(1).map((p, i) => distance(held[i] ?? p, p));
  const mean = sum(spans) / spans.length;
  const [start, end] = [unit(ends.start), unit(ends.end)];
  const stiff = Math.max(reach ** 4 / mean, LEAST * mean ** 3);
  const near = (i: number): boolean => sum(spans.slice(0, i)) < LET_GO || sum(spans.slice(i + 1)) < LET_GO;
  const stiffness = spans.map((_, i) => (near(i) ? thin * stiff : stiff));
  const solve = (of: 'x' | 'y') =>
    heldBeam(
      held.map((p) => p[of]),
      spans,
      [start[of], end[of]],
      stiffness,
    );
  const [xs, ys] = [solve('x'), solve('y')];
  const at = (i: number): Point => point(xs[2 * i] ?? 0, ys[2 * i] ?? 0);
  const heading = (i: number): Vector => ({ x: xs[2 * i + 1] ?? 0, y: ys[2 * i + 1] ?? 0 });
  return spans.map((span, i): Cubic => {
    const [from, to] = [at(i), at(i + 1)];
    const [out, into] = [scaled(heading(i), span / 3), scaled(heading(i + 1), span / 3)];
    return {
      kind: 'cubic',
      from,
      handle1: point(from.x + out.x, from.y + out.y),
      handle2: point(to.x - into.x, to.y - into.y),
      to,
    };
  });
}

const sum = (lengths: readonly number[]): number => lengths.reduce((total, each) => total + each, 0);

/** As good as no stiffness beside a spring, in springs for a span of mean length; with none at all no slope is known. */
const LEAST = 1e-7;

/** Places nearer to each other than this are one, mm: a batten of steel could not be led through both. */
const APART = 0.1;

/** The places without those that repeat the one before or the last. */
function apart(places: readonly Point[]): readonly Point[] {
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last) return [];
  const kept = [first];
  for (const p of places.slice(1, -1))
    if (distance(kept.at(-1) ?? first, p) > APART && distance(p, last) > APART) kept.push(p);
  return [...kept, last];
}

/**
 * One coordinate: values and slopes, alternately, of a beam of this stiffness held by unit springs, from the matrix
 * of a beam's bending energy in the values and slopes at its ends (any textbook of finite elements).
 */
function heldBeam(
  values: readonly number[],
  spans: readonly number[],
  slopes: readonly [number, number],
  stiffness: readonly number[],
): readonly number[] {
  const size = 2 * values.length;
  const matrix = Array.from({ length: size }, () => [0, 0, 0, 0]);
  const right = values.flatMap((value) => [value, 0]);
  const add = (i: number, j: number, value: number): void => {
    const row = matrix[Math.max(i, j)];
    const off = Math.abs(i - j);
    if (row) row[off] = (row[off] ?? 0) + value;
  };
  for (let i = 0; i < values.length; i++) add(2 * i, 2 * i, 1);
  for (const [i, span] of spans.entries()) {
    const k = (stiffness[i] ?? 0) / span ** 3;
    const energy = [
      [12],
      [6 * span, 4 * span ** 2],
      [-12, -6 * span, 12],
      [6 * span, 2 * span ** 2, -6 * span, 4 * span ** 2],
    ];
    for (const [row, entries] of energy.entries())
      for (const [column, entry] of entries.entries()) add(2 * i + row, 2 * i + column, k * entry);
  }
  const last = size - 2;
  const clamps: readonly (readonly [number, number])[] = [
    [0, values[0] ?? 0],
    [1, slopes[0]],
    [last, values.at(-1) ?? 0],
    [last + 1, slopes[1]],
  ];
  return bandedSolution(matrix, right, new Map(clamps));
}
