import type { Cubic, Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { inflectionCount, isStraight } from '../geometry/inflections.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { distance, type Point } from '../geometry/point.ts';
import { COINCIDENCE, RELATION, ROUNDING } from '../geometry/tolerance.ts';
import { batten } from './batten.ts';
import { leadingPlaces } from './leading-places.ts';
import { ofLength } from './of-length.ts';
import { redrawn } from './redraw.ts';
import { roundedKink } from './round-kink.ts';

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

/**
 * Blends the cut ends of an edge as is done on paper: a batten is led through the middle of every short stretch and
 * of every gap, keeping the corner at either end of the edge as it was. The batten that bends most and yet changes
 * no more often between hollow and round than wished, and comes out at the length asked for, is taken; if there is
 * none, the calmest, and of those the one nearest in length. A single kink is rounded where it is.
 */
export function blended(stretches: readonly Edge[], wish: BlendWish): Blend {
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) return { curves: [], deviation: 0 };
  const [from, to] = [edgeStart(first), edgeEnd(last)];
  if (wish.straight) return { curves: [{ kind: 'line', from, to }], deviation: 0 };
  const rounded =
    wish.length === undefined ? undefined : roundedKink(stretches, wish.length, wish.inflections);
  const curves = rounded ?? led(stretches, wish);
  return { curves: curves.map(plain), deviation: strayOf(curves, leadingPlaces(stretches)) };
}

/** How long bumps are that the batten evens out, in shares of the line's length, the most willing first. */
const REACHES = [0, 1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4];

/** A batten that strays farther than this is tried again thinned at its ends to this share, mm: by eye, no source. */
const FAR = 4;
const THIN = 0.01;

function led(stretches: readonly Edge[], wish: BlendWish): readonly Cubic[] {
  const places = leadingPlaces(stretches);
  const even = calmest(stretches, places, wish, 1);
  const stray = strayOf(even.curves, places);
  if (stray <= FAR) return even.curves;
  const thin = calmest(stretches, places, wish, THIN);
  const better = thin.waves <= even.waves && thin.miss <= Math.max(even.miss, COINCIDENCE);
  return better && strayOf(thin.curves, places) < stray ? thin.curves : even.curves;
}

const strayOf = (curves: readonly Curve[], places: readonly Point[]): number =>
  Math.max(...places.map((p) => nearestOnEdge({ curves }, p).distance));

/** A line along the places: how often it changes between hollow and round, and by how much its length is wrong, mm. */
interface Led {
  readonly curves: readonly Cubic[];
  readonly waves: number;
  readonly miss: number;
}

function calmest(
  stretches: readonly Edge[],
  places: readonly Point[],
  { inflections, length }: BlendWish,
  thin: number,
): Led {
  let best: Led = { curves: [], waves: Infinity, miss: Infinity };
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) return best;
  const ends = { start: startDirection(first), end: endDirection(last) };
  const whole = places.reduce((sum, p, i) => sum + distance(places[i - 1] ?? p, p), 0);
  for (const share of REACHES) {
    const fair = redrawn(batten(places, ends, share * whole, thin));
    const waves = inflectionCount({ name: '', curves: fair });
    if (waves > best.waves) continue;
    const curves = length === undefined ? fair : ofLength(fair, length, Math.max(waves, inflections));
    const miss = length === undefined ? 0 : Math.abs(edgeLength({ name: '', curves }, RELATION) - length);
    if (waves < best.waves || miss < best.miss) best = { curves, waves, miss };
    if (best.waves <= inflections && best.miss <= COINCIDENCE) break;
  }
  return best;
}

/** A cubic that came out straight is its chord. */
const plain = (curve: Curve): Curve =>
  isStraight(curve, ROUNDING * 1000) ? { kind: 'line', from: curve.from, to: curve.to } : curve;
