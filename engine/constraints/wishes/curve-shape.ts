import { gaussPairs } from '../../geometry/gauss-legendre.ts';
import { noControlPoints, place, pullBack } from '../compile/control-points.ts';
import type { Equations } from '../compile/equations.ts';
import { type Jet, jetAt, noJet, spread } from '../compile/jet.ts';
import type { Slots } from '../compile/slots.ts';
import { cubicNamed } from '../relations/no-inflection.ts';
import { rootOfWeight, type WishOf } from './wish-of.ts';

/** Pairs of Gauss-Legendre nodes on a cubic. */
const PAIRS = 5;
const NODES = 2 * PAIRS;
const RULE = gaussPairs(PAIRS);
/** The nodes and their weights on [0, 1]. */
const PLACES = Array.from({ length: NODES }, (_, i) => {
  const node = RULE[i - (i % 2)] as number;
  return (1 + (i % 2 === 0 ? node : -node)) / 2;
});
const WEIGHTS = PLACES.map((_, i) => (RULE[i - (i % 2) + 1] as number) / 2);

/**
 * Chord times the integral of k^2 ds, as a sum of squares: at the node t with weight w the residual is
 * sqrt(w chord) q / |v|^(5/2), where v, a are the derivatives of the cubic and q = cross(v, a), so that
 * k = q / |v|^3 and ds = |v| dt.
 */
export const lowBending = (wish: WishOf<'low bending'>, slots: Slots): Equations =>
  integral(wish, slots, 0.5, (jet, by) => {
    const { vx, vy, ax, ay } = jet;
    const square = vx * vx + vy * vy;
    const f = square ** -1.25;
    const q = vx * ay - vy * ax;
    const byQ = f;
    const along = (-2.5 * f * q) / square;
    by.vx = byQ * ay + along * vx;
    by.vy = -byQ * ax + along * vy;
    by.ax = -byQ * vy;
    by.ay = byQ * vx;
    by.jx = 0;
    by.jy = 0;
    return f * q;
  });

/**
 * Chord cubed times the integral of (dk/ds)^2 ds, as a sum of squares: with the third derivative j the residual is
 * sqrt(w chord^3) (cross(v, j) |v|^2 - 3 q dot(v, a)) / |v|^(11/2).
 */
export const fair = (wish: WishOf<'fair'>, slots: Slots): Equations =>
  integral(wish, slots, 1.5, (jet, by) => {
    const { vx, vy, ax, ay, jx, jy } = jet;
    const square = vx * vx + vy * vy;
    const f = square ** -2.75;
    const q = vx * ay - vy * ax;
    const rise = vx * jy - vy * jx;
    const dot = vx * ax + vy * ay;
    const top = rise * square - 3 * q * dot;
    const along = f * (2 * rise - (5.5 * top) / square);
    const byRise = f * square;
    const byQ = -3 * f * dot;
    const byDot = -3 * f * q;
    by.vx = along * vx + byRise * jy + byQ * ay + byDot * ax;
    by.vy = along * vy - byRise * jx - byQ * ax + byDot * ay;
    by.ax = -byQ * vy + byDot * vx;
    by.ay = byQ * vx + byDot * vy;
    by.jx = -byRise * vy;
    by.jy = byRise * vx;
    return f * top;
  });

/** The integrand's root at a jet, without chord and weight; its derivatives by the jet are written to `by`. */
type Integrand = (jet: Jet, by: Jet) => number;

/** One residual a Gauss node: sqrt(weight of the node) chord^power times the integrand's root. */
function integral(
  wish: WishOf<'low bending' | 'fair'>,
  slots: Slots,
  power: number,
  integrand: Integrand,
): Equations {
  const { name } = wish;
  const curve = cubicNamed(slots, wish.curve, name);
  const root = rootOfWeight(wish);
  const factors = WEIGHTS.map((weight) => root * Math.sqrt(weight));
  const p = noControlPoints();
  const by = noControlPoints();
  const jet = noJet();
  const byJet = noJet();
  return {
    name,
    goal: 'least',
    unit: 'mm',
    scale: 1,
    rows: NODES,
    elements: [
      {
        slots: curve.slots,
        linear: false,
        evaluate: (x, values, jacobian) => {
          place(x, curve, p);
          const dx = p.x3 - p.x0;
          const dy = p.y3 - p.y0;
          const square = dx * dx + dy * dy;
          const chord = square ** (power / 2);
          for (let i = 0; i < NODES; i++) {
            const t = PLACES[i] as number;
            const factor = (factors[i] as number) * chord;
            jetAt(p, t, jet);
            const value = factor * integrand(jet, byJet);
            spread(byJet, t, by);
            pullBack(x, curve, p, by, jacobian, 8 * i);
            for (let k = 8 * i; k < 8 * i + 8; k++) jacobian[k] = factor * (jacobian[k] as number);
            const byChord = (power * value) / square;
            jacobian[8 * i] = (jacobian[8 * i] as number) - byChord * dx;
            jacobian[8 * i + 1] = (jacobian[8 * i + 1] as number) - byChord * dy;
            jacobian[8 * i + 2] = (jacobian[8 * i + 2] as number) + byChord * dx;
            jacobian[8 * i + 3] = (jacobian[8 * i + 3] as number) + byChord * dy;
            values[i] = value;
          }
        },
      },
    ],
  };
}
