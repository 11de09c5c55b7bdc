import type { Cubic, Curve, Edge } from '../geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  pointAlong,
  startDirection,
} from '../geometry/edge.ts';
import { fitPoints } from '../geometry/fit.ts';
import { inflectionCount, isStraight } from '../geometry/inflections.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between, distance, moved, type Point } from '../geometry/point.ts';
import { COINCIDENCE, RELATION, ROUNDING } from '../geometry/tolerance.ts';
import { scaled, type Vector } from '../geometry/vector.ts';

/** A fair curve through the moved stretches of a cut edge, and how far it strays from the places it was led by. */
export interface Blend {
  readonly curves: readonly Curve[];
  /** mm */
  readonly deviation: number;
}

/** How the blended edge has to come out. */
export interface BlendWish {
  /** No more changes from hollow to round than this, where that can be had. */
  readonly inflections: number;
  /** The stretches were shifted only and the edge was straight before: so it is afterwards. */
  readonly straight: boolean;
  /** The length it has to come out at, mm, where that can be had. */
  readonly length?: number;
}

/** On either side of a cut the old line is left to the blend for so far at least, mm: common practice, no source. */
const LET_GO = 30;

/** Places that lead the blend along what is left of a long stretch lie so far apart, mm. */
const SPACING = 15;

/**
 * How far the blend may stray from the places that lead it, mm, nearest first. Steps of a cut edge are cut off
 * and filled in alike; a pencil line is 0.5 mm wide.
 */
const STRAYS = [0.1, 0.2, 0.4, 0.8, 1.6, 3.2, 6.4];

/**
 * Blends the cut ends of an edge as is done on paper: a smooth line through the middle of every short stretch and
 * of every gap, keeping the corner at either end of the edge as it was. A long stretch is followed until
 * near the cut. The nearest sound fit (G1) that has no more inflections than wished is taken; if there is none, the
 * one with the fewest; across gaps, one cubic that swings from end to end where that waves less.
 */
export function blended(stretches: readonly Edge[], wish: BlendWish): Blend {
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) return { curves: [], deviation: 0 };
  const [from, to] = [edgeStart(first), edgeEnd(last)];
  if (wish.straight) return { curves: [{ kind: 'line', from, to }], deviation: 0 };
  const ends = { start: startDirection(first), end: endDirection(last) };
  const points = isUnbroken(stretches) ? placesInKinkedLine(stretches) : leadingPlaces(stretches);
  const fair = hasGaps(stretches)
    ? calmest(points, ends, wish.inflections)
    : fairest(points, ends, wish.inflections).curves;
  const sized = wish.length === undefined ? fair : ofLength(fair, wish.length);
  const off = points.map((p) => nearestOnEdge({ curves: sized }, p).distance);
  return { curves: sized.map(plain), deviation: Math.max(...off) };
}

/** Whether stretches were moved apart, as in a parallel spread. */
const hasGaps = (stretches: readonly Edge[]): boolean =>
  stretches.some((stretch, i) => {
    const before = stretches[i - 1];
    return before !== undefined && distance(edgeEnd(before), edgeStart(stretch)) > COINCIDENCE;
  });

/** Whether short stretches still hang together, end to end, as at hinges. */
const isUnbroken = (stretches: readonly Edge[]): boolean =>
  !hasGaps(stretches) && stretches.every((stretch) => edgeLength(stretch, RELATION) <= 2 * LET_GO);

interface Ends {
  readonly start: Vector;
  readonly end: Vector;
}

/** The fairest fit, or where that waves more than wished and one plain swing waves less, the swing. */
function calmest(points: readonly Point[], ends: Ends, inflections: number): readonly Cubic[] {
  const fit = fairest(points, ends, inflections);
  if (fit.waves <= inflections) return fit.curves;
  const curves = swing(points, ends);
  return inflectionCount({ name: '', curves }) < fit.waves ? curves : fit.curves;
}

interface Fit {
  readonly curves: readonly Cubic[];
  /** Changes from hollow to round. */
  readonly waves: number;
}

function fairest(points: readonly Point[], ends: Ends, inflections: number): Fit {
  let best: readonly Cubic[] | undefined;
  let fewest = Infinity;
  for (const stray of STRAYS) {
    const { curves } = fitPoints(points, stray, ends);
    const count = inflectionCount({ name: '', curves });
    if (count >= fewest || !curves.every(isSound)) continue;
    fewest = count;
    best = curves;
    if (count <= inflections) break;
  }
  return { curves: best ?? swing(points, ends), waves: fewest };
}

/** A handle shorter or longer than this share of its chord stands for a fit that had too little to go by. */
const SOUND = [0.05, 1.2] as const;

function isSound({ from, handle1, handle2, to }: Cubic): boolean {
  const chord = distance(from, to);
  return [distance(from, handle1), distance(handle2, to)].every(
    (handle) => handle >= SOUND[0] * chord && handle <= SOUND[1] * chord,
  );
}

/** One cubic from end to end with handles of a third of its chord. */
function swing(points: readonly Point[], { start, end }: Ends): readonly Cubic[] {
  const [from, to] = [points[0], points.at(-1)];
  if (!from || !to) return [];
  const third = distance(from, to) / 3;
  const handle1 = moved(from, scaled(start, third));
  return [{ kind: 'cubic', from, handle1, handle2: moved(to, scaled(end, -third)), to }];
}

/** A cubic that came out straight is its chord. */
const plain = (curve: Curve): Curve =>
  isStraight(curve, ROUNDING * 1000) ? { kind: 'line', from: curve.from, to: curve.to } : curve;

/** The places that lead a blend across gaps. */
function leadingPlaces(stretches: readonly Edge[]): readonly Point[] {
  const places: Point[] = [];
  for (const [i, stretch] of stretches.entries()) {
    const [before, after] = [stretches[i - 1], stretches[i + 1]];
    if (before) places.push(between(edgeEnd(before), edgeStart(stretch), 0.5));
    else places.push(edgeStart(stretch));
    const length = edgeLength(stretch, RELATION);
    const start = before ? letGo(before, stretch) : 0;
    const end = length - (after ? letGo(stretch, after) : 0);
    if (end - start <= SPACING) places.push(pointAlong(stretch, length / 2).point);
    else {
      const steps = Math.ceil((end - start) / SPACING);
      for (let step = before ? 0 : 1; step <= (after ? steps : steps - 1); step++)
        places.push(pointAlong(stretch, start + ((end - start) * step) / steps).point);
    }
    if (!after) places.push(edgeEnd(stretch));
  }
  return places;
}

const letGo = (before: Edge, after: Edge): number =>
  Math.max(LET_GO, 1.5 * distance(edgeEnd(before), edgeStart(after)));

/**
 * A circle as long as a line of equal chords crosses every chord at this share of it on either side of its middle,
 * for small angles: 1 / sqrt 6, since it lies as far inside the corners as to make up for what it saves.
 */
const ON_CIRCLE = 1 / Math.sqrt(6);

/** The places that lead a blend of short stretches which meet in kinks. */
function placesInKinkedLine(stretches: readonly Edge[]): readonly Point[] {
  return stretches.flatMap((stretch, i) => {
    const length = edgeLength(stretch, RELATION);
    const at = (part: number): Point => pointAlong(stretch, part * length).point;
    return [
      i === 0 ? edgeStart(stretch) : at(0.5 - ON_CIRCLE),
      i === stretches.length - 1 ? edgeEnd(stretch) : at(0.5 + ON_CIRCLE),
    ];
  });
}

/** The chain with its handles made longer or shorter together, so that it has the length asked for; by bisection. */
function ofLength(curves: readonly Cubic[], length: number): readonly Cubic[] {
  const excess = (chain: readonly Cubic[]): number =>
    edgeLength({ name: '', curves: chain }, RELATION) - length;
  let [low, high] = [0.6, 1.6];
  let best = curves;
  let least = Math.abs(excess(curves));
  for (let step = 0; step < 40 && least > RELATION; step++) {
    const factor = (low + high) / 2;
    const tried = curves.map((cubic) => withHandles(cubic, factor));
    const over = excess(tried);
    if (Math.abs(over) < least) [best, least] = [tried, Math.abs(over)];
    if (over > 0) high = factor;
    else low = factor;
  }
  return best;
}

const withHandles = ({ kind, from, handle1, handle2, to }: Cubic, factor: number): Cubic => ({
  kind,
  from,
  handle1: between(from, handle1, factor),
  handle2: between(to, handle2, factor),
  to,
});
