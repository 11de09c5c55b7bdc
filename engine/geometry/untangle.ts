import { boundsMeet, controlBox } from './bounds.ts';
import { type ChordMeeting, firstMeeting } from './chord-meeting.ts';
import { chordPoints } from './chords.ts';
import type { Curve } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { runOneWay } from './one-way.ts';
import { signedArea } from './outline.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { part } from './split.ts';
import { COINCIDENCE, FLATNESS } from './tolerance.ts';
import { cross } from './vector.ts';

/**
 * A closed chain without its crossings. A parallel crosses itself where the line it runs along is hollower than the
 * distance, or where two parallels meet in an inward corner; each crossing cuts the chain in two loops, and the
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

/** No parallel has a tenth as many crossings; a chain that still has some then is left to the checks. */
const MOST_CUTS = 200;

interface CurvePlace {
  readonly curve: number;
  readonly t: number;
}

type SelfCrossing = readonly [CurvePlace, CurvePlace];

const area = (curves: readonly Curve[]): number => signedArea([{ name: '', curves }]);

/** The chain cut at a crossing: the loop from its first place to its second, and the rest. */
function cutAt(chain: readonly Curve[], [a, b]: SelfCrossing): readonly [readonly Curve[], readonly Curve[]] {
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

/** A crossing of chords with another curve of the chain. */
interface FoundMeeting extends ChordMeeting {
  readonly other: number;
}

/** The first place of a chain that it comes to again, with that second place; undefined when there is none. */
function firstCrossing(chain: readonly Curve[]): SelfCrossing | undefined {
  const boxes = chain.map(controlBox);
  const known: (readonly number[])[] = [];
  const chords = (i: number, curve: Curve): readonly number[] => {
    known[i] ??= chordPoints(curve, FLATNESS);
    return known[i];
  };
  for (const [i, a] of chain.entries()) {
    let first: FoundMeeting | undefined;
    for (let j = i; j < chain.length; j++) {
      const [b, boxA, boxB] = [chain[j], boxes[i], boxes[j]];
      if (!b || !boxA || !boxB || !boundsMeet(boxA, boxB)) continue;
      // All but a few curves meet only the one before and the one after, and those only at their joint.
      const follows = j - i <= 1;
      const closes = i === 0 && j === chain.length - 1;
      if ((follows && runOneWay(a, b)) || (closes && runOneWay(b, a))) continue;
      const met = firstMeeting(chords(i, a), chords(j, b), { apart: j - i, closes });
      if (met && !(first && first.chord <= met.chord)) first = { ...met, other: j };
    }
    if (first) {
      const { s, t, other } = first;
      return exact(chain, [
        { curve: i, t: s },
        { curve: other, t },
      ]);
    }
  }
  return undefined;
}
/** Steps that make a crossing exact; Newton's method doubles its digits in each. */
const STEPS = 8;

/**
 * A crossing of chords moved to the crossing of their curves, by Newton's method, kept inside both curves. Where
 * the curves nearly touch it may lead astray; then the crossing of the chords stands.
 */
function exact(chain: readonly Curve[], [a, b]: SelfCrossing): SelfCrossing {
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
