import type { Cubic, Edge } from '../geometry/curve.ts';
import { lengthUpTo } from '../geometry/edge.ts';
import { asCubic, pointAt } from '../geometry/evaluate.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { rootsBetween01 } from '../geometry/roots.ts';
import { dot } from '../geometry/vector.ts';

/** Where a point stands beside an edge: how far along it from its start, and how far off it, mm. */
export interface Foot {
  readonly along: number;
  readonly off: number;
}

/** The foot of the point `p` on an edge: the place of the edge nearest to it. The edge must have curves. */
export function footOn(edge: Edge, p: Point): Foot {
  const places = edge.curves.flatMap((curve, index) =>
    [0, ...feet(asCubic(curve), p), 1].map((t) => ({ curve: index, t, off: distance(p, pointAt(curve, t)) })),
  );
  const nearest = places.reduce((best, place) => (place.off < best.off ? place : best));
  return { along: lengthUpTo(edge, nearest), off: nearest.off };
}

/** Binomials that turn a cubic times a quadratic, both in Bernstein form, into a quintic. */
const cubicBinomials = [1, 3, 3, 1] as const;
const quadraticBinomials = [1, 2, 1] as const;
const quinticBinomials = [1, 5, 10, 10, 5, 1] as const;

/**
 * Parameters at which the line from `p` meets a cubic squarely: the roots of the quintic (B - p) . B'
 * (P. J. Schneider, "Solving the nearest-point-on-curve problem", Graphics Gems, 1990).
 */
function feet({ from, handle1, handle2, to }: Cubic, p: Point): readonly number[] {
  const away = [from, handle1, handle2, to].map((q) => vectorBetween(p, q));
  const along = [vectorBetween(from, handle1), vectorBetween(handle1, handle2), vectorBetween(handle2, to)];
  const quintic = [0, 0, 0, 0, 0, 0];
  for (const [i, a] of away.entries())
    for (const [j, d] of along.entries()) {
      const weight = (cubicBinomials[i] ?? 0) * (quadraticBinomials[j] ?? 0);
      quintic[i + j] = (quintic[i + j] ?? 0) + (weight * dot(a, d)) / (quinticBinomials[i + j] ?? 1);
    }
  return rootsBetween01(quintic);
}
