import type { Curve, Edge } from '../geometry/curve.ts';
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
import { between, distance, type Point } from '../geometry/point.ts';
import { COINCIDENCE, RELATION } from '../geometry/tolerance.ts';

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
  /** The length to keep, mm: for the edge at the hinges, where nothing is added. */
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
 * near the cut. The nearest fit (G1) that has no more inflections than wished is taken; if there is none, the one
 * with the fewest.
 */
export function blended(stretches: readonly Edge[], wish: BlendWish): Blend {
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) return { curves: [], deviation: 0 };
  if (wish.straight)
    return { curves: [{ kind: 'line', from: edgeStart(first), to: edgeEnd(last) }], deviation: 0 };
  const ends = { start: startDirection(first), end: endDirection(last) };
  const led = (points: readonly Point[]): Blend => fairest(points, ends, wish.inflections);
  if (wish.length === undefined) return led(leadingPlaces(stretches));
  return ofLength(wish.length, (share) => led(placesInKinkedLine(stretches, share)));
}

function fairest(
  points: readonly Point[],
  ends: Parameters<typeof fitPoints>[2],
  inflections: number,
): Blend {
  let best: Blend | undefined;
  let fewest = Infinity;
  for (const stray of STRAYS) {
    const fit = fitPoints(points, stray, ends);
    const count = inflectionCount({ name: '', curves: fit.curves });
    if (count >= fewest) continue;
    fewest = count;
    best = { deviation: fit.deviation, curves: fit.curves.map(plain) };
    if (count <= inflections) break;
  }
  return best ?? { curves: [], deviation: 0 };
}

/** A cubic that came out straight is its chord. */
const plain = (curve: Curve): Curve =>
  isStraight(curve, COINCIDENCE) ? { kind: 'line', from: curve.from, to: curve.to } : curve;

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
 * The places that lead a blend of stretches which meet in kinks: in each, `share` of its length on either side of
 * its middle.
 */
function placesInKinkedLine(stretches: readonly Edge[], share: number): readonly Point[] {
  return stretches.flatMap((stretch, i) => {
    const length = edgeLength(stretch, RELATION);
    const at = (part: number): Point => pointAlong(stretch, part * length).point;
    return [
      i === 0 ? edgeStart(stretch) : at(0.5 - share),
      i === stretches.length - 1 ? edgeEnd(stretch) : at(0.5 + share),
    ];
  });
}

/**
 * A line through the kinks is too long, one through the middles too short: somewhere between lies the one of the
 * right length (at 1 / sqrt 6 = 0.41 of each stretch, when they are equal chords of a circle). Bisection.
 */
function ofLength(length: number, led: (share: number) => Blend): Blend {
  const excess = ({ curves }: Blend): number => edgeLength({ name: '', curves }, RELATION) - length;
  let [low, high] = [0.02, 0.49];
  let best = led(high);
  for (let step = 0; step < 30 && high - low > 1e-7; step++) {
    const share = (low + high) / 2;
    const blend = led(share);
    const over = excess(blend);
    if (Math.abs(over) < Math.abs(excess(best))) best = blend;
    if (Math.abs(over) <= RELATION) break;
    if (over > 0) high = share;
    else low = share;
  }
  return best;
}
