import type { Curve } from '../geometry/curve.ts';
import { derivativeAt, pointAt } from '../geometry/evaluate.ts';
import { signedArea } from '../geometry/outline.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { part } from '../geometry/split.ts';
import { COINCIDENCE, FLATNESS } from '../geometry/tolerance.ts';
import { cross } from '../geometry/vector.ts';
import { type Chord, chordsOf } from './chords.ts';

/**
 * A closed chain without its crossings. A parallel crosses itself where the stitching line is hollower than the
 * allowance, or where two parallels meet in an inward corner; each crossing cuts the chain in two loops, and the
 * one that runs the wrong way round (or, if both run clockwise, the smaller) is cut away. Crossings are found
 * between chords that keep to `FLATNESS` of the curves, then made exact on the curves themselves.
 */
export function untangled(chain: readonly Curve[]): readonly Curve[] {
  let loop = chain;
  for (let cuts = 0; cuts < MOST_CUTS; cuts++) {
    const crossing = firstCrossing(loop);
    if (!crossing) break;
    const [inner, outer] = cutAt(loop, crossing);
    loop = area(inner) > area(outer) ? inner : outer;
  }
  return loop;
}

/** No cutting line has a tenth as many crossings; a chain that still has some then is left to the checks. */
const MOST_CUTS = 200;

interface Place {
  readonly curve: number;
  readonly t: number;
}

type Crossing = readonly [Place, Place];

interface ChainChord extends Chord {
  readonly curve: number;
}

const area = (curves: readonly Curve[]): number => signedArea([{ name: '', curves }]);

/** The chain cut at a crossing: the loop from its first place to its second, and the rest. */
function cutAt(chain: readonly Curve[], [a, b]: Crossing): readonly [readonly Curve[], readonly Curve[]] {
  const first = chain[a.curve];
  const second = chain[b.curve];
  if (!first || !second) return [[], chain];
  const at = pointAt(first, a.t);
  const between =
    a.curve === b.curve
      ? [part(first, a.t, b.t)]
      : [part(first, a.t, 1), ...chain.slice(a.curve + 1, b.curve), part(second, 0, b.t)];
  const around = [
    part(second, b.t, 1),
    ...chain.slice(b.curve + 1),
    ...chain.slice(0, a.curve),
    part(first, 0, a.t),
  ];
  return [tied(between, at), tied(around, at)];
}

/** A loop whose first curve starts and last curve ends exactly at the crossing; slivers are left out. */
function tied(loop: readonly Curve[], at: Point): readonly Curve[] {
  const kept = loop.filter((curve) => distance(curve.from, curve.to) > COINCIDENCE);
  return kept.map((curve, i) => ({
    ...curve,
    ...(i === 0 ? { from: at } : {}),
    ...(i === kept.length - 1 ? { to: at } : {}),
  }));
}

/** The first place of a chain that it comes to again, with that second place; undefined when there is none. */
function firstCrossing(chain: readonly Curve[]): Crossing | undefined {
  const chords = chain.flatMap((curve, i) =>
    chordsOf(curve, FLATNESS).map((chord) => ({ ...chord, curve: i })),
  );
  const order = chords.map((_, i) => i).sort((i, j) => left(chords, i) - left(chords, j));
  let best: readonly [number, number, Crossing] | undefined;
  for (const [rank, i] of order.entries()) {
    const a = chords[i];
    if (!a) continue;
    const right = Math.max(a.from.x, a.to.x);
    for (let next = rank + 1; next < order.length; next++) {
      const j = order[next] ?? 0;
      const b = chords[j];
      if (!b || Math.min(b.from.x, b.to.x) > right) break;
      if (neighbours(i, j, chords.length)) continue;
      const met = i < j ? meeting(a, b) : meeting(b, a);
      if (!met) continue;
      const [low, high] = [Math.min(i, j), Math.max(i, j)];
      if (best && (best[0] < low || (best[0] === low && best[1] <= high))) continue;
      best = [low, high, met];
    }
  }
  return best && exact(chain, best[2]);
}

const left = (chords: readonly ChainChord[], i: number): number => {
  const chord = chords[i];
  return chord ? Math.min(chord.from.x, chord.to.x) : 0;
};

const neighbours = (i: number, j: number, count: number): boolean => {
  const apart = Math.abs(i - j);
  return apart <= 1 || apart === count - 1;
};

/** Where two chords cross, as places on their curves. */
function meeting(a: ChainChord, b: ChainChord): Crossing | undefined {
  const u = vectorBetween(a.from, a.to);
  const v = vectorBetween(b.from, b.to);
  const apart = vectorBetween(a.from, b.from);
  const sine = cross(u, v);
  if (sine === 0) return undefined;
  const s = cross(apart, v) / sine;
  const t = cross(apart, u) / sine;
  if (s < 0 || s > 1 || t < 0 || t > 1) return undefined;
  return [
    { curve: a.curve, t: a.t0 + s * (a.t1 - a.t0) },
    { curve: b.curve, t: b.t0 + t * (b.t1 - b.t0) },
  ];
}

/** Steps that make a crossing exact; Newton's method doubles its digits in each. */
const STEPS = 8;

/**
 * A crossing of chords moved to the crossing of their curves, by Newton's method, kept inside both curves. Where
 * the curves nearly touch it may lead astray; then the crossing of the chords stands.
 */
function exact(chain: readonly Curve[], [a, b]: Crossing): Crossing {
  const first = chain[a.curve];
  const second = chain[b.curve];
  if (!first || !second) return [a, b];
  let [s, t] = [a.t, b.t];
  for (let step = 0; step < STEPS; step++) {
    const apart = vectorBetween(pointAt(first, s), pointAt(second, t));
    const u = derivativeAt(first, s);
    const v = derivativeAt(second, t);
    const sine = cross(u, v);
    if (sine === 0) break;
    s = Math.min(1, Math.max(0, s + cross(apart, v) / sine));
    t = Math.min(1, Math.max(0, t + cross(apart, u) / sine));
  }
  const missed = distance(pointAt(first, s), pointAt(second, t)) > COINCIDENCE;
  const strayed = distance(pointAt(first, s), pointAt(first, a.t)) > ASTRAY;
  return missed || strayed
    ? [a, b]
    : [
        { ...a, t: s },
        { ...b, t },
      ];
}

/** Chords keep within `FLATNESS` of their curves, so crossings at a fair angle move no farther than this, mm. */
const ASTRAY = 100 * FLATNESS;
