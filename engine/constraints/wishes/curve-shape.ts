import {
  addHandleCurvature,
  addProduct,
  type ControlPoints,
  noControlPoints,
  noCubic,
  place,
  pullBack,
} from '../compile/control-points.ts';
import type { Equations } from '../compile/equations.ts';
import type { Slots } from '../compile/slots.ts';
import { cubicNamed } from '../relations/no-inflection.ts';
import { rootOfWeight, type WishOf } from './wish-of.ts';

/** Weights of the four control points in a sum, taken for x and for y. */
type Weights = readonly [number, number, number, number];

/**
 * The second derivative of a cubic runs straight from a = 6 (p0 - 2 p1 + p2) to b = 6 (p1 - 2 p2 + p3); the integral
 * of its square is |(a + b) / 2|^2 + |b - a|^2 / 12, and b - a is the third derivative.
 */
const MEAN_BEND: Weights = [3, -3, -3, 3];
const CHANGE_OF_BEND: Weights = [-6, 18, -18, 6];
const SPREAD_OF_BEND = CHANGE_OF_BEND.map((w) => w / Math.sqrt(12)) as unknown as Weights;

/** The same weights for x alone and for y alone. */
const forEachAxis = ([w0, w1, w2, w3]: Weights): readonly ControlPoints[] => [
  { x0: w0, y0: 0, x1: w1, y1: 0, x2: w2, y2: 0, x3: w3, y3: 0 },
  { x0: 0, y0: w0, x1: 0, y1: w1, x2: 0, y2: w2, x3: 0, y3: w3 },
];
const BEND = [...forEachAxis(MEAN_BEND), ...forEachAxis(SPREAD_OF_BEND)];
const CHANGE = forEachAxis(CHANGE_OF_BEND);

/**
 * The integral of the squared second derivative over the parameter, by chord squared. On a curve that is travelled
 * at an even speed this is chord times the integral of k^2 ds, the bending energy; on others it also evens out the
 * speed, which keeps the handles apart. Being quadratic in the control points it is made least in a few steps
 * (the linearised thin beam of spline theory: de Boor, A Practical Guide to Splines, 1978; from memory).
 */
export const lowBending = (wish: WishOf<'low bending'>, slots: Slots): Equations =>
  squares(wish, slots, BEND);

/** The squared third derivative, by chord squared: in the same sense chord cubed times the integral of (dk/ds)^2 ds. */
export const fair = (wish: WishOf<'fair'>, slots: Slots): Equations => squares(wish, slots, CHANGE);

/** Room for what is worked out within one evaluation, shared by all wishes: nothing is kept in it from one to the next. */
const p = noCubic();
const total = noControlPoints();
const slope = new Float64Array(8);
const factorSlope = new Float64Array(8);

/** A residual for each weighted sum of the control points' coordinates, by the chord. */
function squares(
  wish: WishOf<'low bending' | 'fair'>,
  slots: Slots,
  all: readonly ControlPoints[],
): Equations {
  const { name } = wish;
  const curve = cubicNamed(slots, wish.curve, name);
  const root = rootOfWeight(wish);
  return {
    name,
    goal: 'least',
    unit: 'mm',
    scale: 1,
    rows: all.length,
    elements: [
      {
        slots: curve.slots,
        linear: false,
        evaluate: (x, values, jacobian) => {
          place(x, curve, p);
          const dx = p.x3 - p.x0;
          const dy = p.y3 - p.y0;
          const square = dx * dx + dy * dy;
          const factor = root / Math.sqrt(square);
          for (let row = 0; row < all.length; row++) {
            const by = all[row] as ControlPoints;
            const value = factor * weighted(p, by);
            const first = 8 * row;
            pullBack(p, by, factor, jacobian, first);
            addAlongChord(jacobian, first, (-value * dx) / square, (-value * dy) / square);
            values[row] = value;
          }
        },
        // The product rule on factor times sum, with factor = root / chord.
        curve: (x, weights, into) => {
          place(x, curve, p);
          const dx = p.x3 - p.x0;
          const dy = p.y3 - p.y0;
          const square = dx * dx + dy * dy;
          const factor = root / Math.sqrt(square);
          addUp(all, weights, factor, total);
          into.fill(0, 0, 64);
          addHandleCurvature(p, total, into);
          pullBack(p, total, 1, slope, 0);
          factorSlope.fill(0);
          addAlongChord(factorSlope, 0, -dx / square, -dy / square);
          addProduct(slope, factorSlope, 2, into);
          const sum = weighted(p, total);
          addProduct(factorSlope, factorSlope, 3 * sum, into);
          addOnChord(into, -sum / square);
        },
      },
    ],
  };
}

/** Adds derivatives by the chord, from first point to last, to derivatives by the slots of its ends. */
function addAlongChord(into: Float64Array, offset: number, byX: number, byY: number): void {
  into[offset] = (into[offset] as number) - byX;
  into[offset + 1] = (into[offset + 1] as number) - byY;
  into[offset + 2] = (into[offset + 2] as number) + byX;
  into[offset + 3] = (into[offset + 3] as number) + byY;
}

/** Adds a second derivative that is the same along every direction of the chord. */
function addOnChord(into: Float64Array, value: number): void {
  for (const k of [0, 9, 18, 27]) into[k] = (into[k] as number) + value;
  for (const k of [16, 25]) into[k] = (into[k] as number) - value;
}

/** Writes `factor` times the sum of rows of weights, each times its own weight. */
function addUp(
  all: readonly ControlPoints[],
  weights: Float64Array,
  factor: number,
  into: ControlPoints,
): void {
  into.x0 = into.x1 = into.x2 = into.x3 = 0;
  into.y0 = into.y1 = into.y2 = into.y3 = 0;
  for (let row = 0; row < all.length; row++) {
    const by = all[row] as ControlPoints;
    const weight = factor * (weights[row] as number);
    into.x0 += weight * by.x0;
    into.x1 += weight * by.x1;
    into.x2 += weight * by.x2;
    into.x3 += weight * by.x3;
    into.y0 += weight * by.y0;
    into.y1 += weight * by.y1;
    into.y2 += weight * by.y2;
    into.y3 += weight * by.y3;
  }
}

const weighted = (p: ControlPoints, by: ControlPoints): number =>
  by.x0 * p.x0 +
  by.x1 * p.x1 +
  by.x2 * p.x2 +
  by.x3 * p.x3 +
  by.y0 * p.y0 +
  by.y1 * p.y1 +
  by.y2 * p.y2 +
  by.y3 * p.y3;
