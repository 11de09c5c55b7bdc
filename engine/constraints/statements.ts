import type { CurveEnd, Relation, Term, Wish } from './relations.ts';

/** Two points are the same place. */
export const isAt = (name: string, a: string, b: string): Relation => ({ kind: 'coincident', name, a, b });

/** A point lies on the straight line through two others, between them or beyond. */
export const liesOn = (name: string, point: string, through: readonly [string, string]): Relation => ({
  kind: 'on line',
  name,
  point,
  through,
});

/** Two points are this far apart (mm). */
export const isApart = (name: string, a: string, b: string, mm: number): Relation => ({
  kind: 'distance',
  name,
  a,
  b,
  mm,
});

/** From one point another lies in this direction (radians, from x to y). */
export const isHeaded = (name: string, a: string, b: string, angle: number): Relation => ({
  kind: 'heading',
  name,
  a,
  b,
  angle,
});

/** The edge of these curves is this long (mm). */
export const isLong = (name: string, curves: readonly string[], mm: number): Relation => ({
  kind: 'length',
  name,
  terms: [{ curves, times: 1 }],
  mm,
});

/**
 * Two edges that are sewn together: the first is longer than the second by `ease` (mm), or is gathered to it by
 * `ratio` (length of the first divided by that of the second); plain where neither is given.
 */
export const sewnEqual = (
  name: string,
  first: readonly string[],
  second: readonly string[],
  { ease = 0, ratio = 1 }: { readonly ease?: number; readonly ratio?: number } = {},
): Relation => ({
  kind: 'length',
  name,
  terms: [
    { curves: first, times: 1 },
    { curves: second, times: -ratio },
  ],
  mm: ease,
});

/** From one curve end the line turns to another by this angle (radians), clockwise as drawn. */
export const turns = (name: string, from: CurveEnd, to: CurveEnd, angle: number): Relation => ({
  kind: 'turn',
  name,
  from,
  to,
  angle,
});

/** One curve end stands square to another, turning clockwise as drawn (`1`) or the other way (`-1`). */
export const square = (name: string, from: CurveEnd, to: CurveEnd, way: 1 | -1): Relation =>
  turns(name, from, to, (way * Math.PI) / 2);

/** Two curves that meet run on into each other without a corner. */
export const goesOn = (name: string, before: string, after: string): Relation => ({
  kind: 'tangent',
  name,
  a: { curve: before, end: 'end' },
  b: { curve: after, end: 'start' },
});

/** Two curves that run on into each other bend alike where they meet. */
export const bendsEvenly = (name: string, before: string, after: string): Relation => ({
  kind: 'curvature',
  name,
  a: { curve: before, end: 'end' },
  b: { curve: after, end: 'start' },
});

/** A curve turns one way throughout: clockwise as drawn (`1`) or the other way (`-1`). */
export const keepsTurning = (name: string, curve: string, way: 1 | -1): Relation => ({
  kind: 'no inflection',
  name,
  curve,
  turns: way,
});

/** No part of a curve bends tighter than this radius (mm). */
export const atLeastRound = (name: string, curve: string, mm: number): Relation => ({
  kind: 'least radius',
  name,
  curve,
  mm,
});

/**
 * A line runs on without a corner over a seam: each side is a corner of its panel, from the curve that arrives there to
 * the one that leaves, as the outline runs.
 */
export const runsAcross = (
  name: string,
  one: readonly [arriving: string, leaving: string],
  other: readonly [arriving: string, leaving: string],
): Relation => {
  const cornerOf = ([arriving, leaving]: readonly [string, string]) => ({
    from: { curve: arriving, end: 'end' as const },
    to: { curve: leaving, end: 'start' as const },
  });
  return { kind: 'smooth across seam', name, a: cornerOf(one), b: cornerOf(other) };
};

/** Two points lie on one level (the same y). */
export const level = (name: string, a: string, b: string): Relation =>
  sum(
    name,
    [
      { point: a, axis: 'y', times: 1 },
      { point: b, axis: 'y', times: -1 },
    ],
    0,
  );

/** A weighted sum of coordinates and scalars has this value. */
export const sum = (name: string, terms: readonly Term[], value: number): Relation => ({
  kind: 'sum',
  name,
  terms,
  value,
});

/** A weighted sum of coordinates and scalars comes near this value. */
export const near = (name: string, terms: readonly Term[], value: number, weight: number): Wish => ({
  kind: 'near',
  name,
  terms,
  value,
  weight,
});

/** Each of these curves bends little. */
export const lowBending = (curves: readonly string[], weight: number): readonly Wish[] =>
  curves.map((curve) => ({ kind: 'low bending', name: `${curve} bends little`, curve, weight }));

/** Each of these curves changes its curvature little. */
export const fair = (curves: readonly string[], weight: number): readonly Wish[] =>
  curves.map((curve) => ({ kind: 'fair', name: `${curve} is fair`, curve, weight }));
