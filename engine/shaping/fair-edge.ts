import type { Curve, Edge } from '../geometry/curve.ts';
import { endDirection, startDirection } from '../geometry/edge.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { fitPoints } from '../geometry/fit.ts';
import { isStraight, joints } from '../geometry/inflections.ts';
import { distance, type Point } from '../geometry/point.ts';
import { RELATION_ANGLE, STRAIGHTNESS } from '../geometry/tolerance.ts';

/** A faired edge strays no farther than this from the traced line at its points, mm: half a pencil line. */
const PENCIL = 0.25;

/** A joint that turns less than this is smooth enough to be kept as drawn, radians. */
const SMOOTH = 100 * RELATION_ANGLE;

/** An edge faired. */
export interface Faired {
  readonly curves: readonly Curve[];
  readonly deviation: number;
  readonly kink: number;
}

/**
 * An edge without the small kinks of tracing: one that runs smoothly is kept to the bit, a chain of lines that is
 * straight becomes one line, and any other is fitted anew through its points (G1), with its own headings at the
 * ends. `deviation` says how far it moved (mm), `kink` how sharp the sharpest of its kinks was (radians).
 */
export function faired(edge: Edge): Faired {
  const kink = Math.max(0, ...joints(edge).map(({ angle }) => Math.abs(angle)));
  if (kink <= SMOOTH) return { curves: edge.curves, deviation: 0, kink };
  const points = placesOn(edge);
  const [first, last] = [points[0], points.at(-1)];
  if (first && last && distance(first, last) > 0 && points.every((p) => near(first, last, p)))
    return { curves: [{ kind: 'line', from: first, to: last }], deviation: 0, kink };
  const fit = fitPoints(points, PENCIL, { start: startDirection(edge), end: endDirection(edge) });
  return {
    deviation: fit.deviation,
    kink,
    curves: fit.curves.map((curve) =>
      isStraight(curve) ? { kind: 'line', from: curve.from, to: curve.to } : curve,
    ),
  };
}

function near(a: Point, b: Point, p: Point): boolean {
  const across = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  return Math.abs(across) <= STRAIGHTNESS * distance(a, b);
}

/** The ends of every curve, and places on the bent ones. */
const placesOn = ({ curves }: Edge): readonly Point[] => [
  ...curves.flatMap((curve) => [
    curve.from,
    ...(curve.kind === 'line' ? [] : [0.25, 0.5, 0.75].map((t) => pointAt(curve, t))),
  ]),
  ...curves.slice(-1).map(({ to }) => to),
];
