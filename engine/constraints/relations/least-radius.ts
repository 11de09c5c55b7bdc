import { DraftMistake } from '../../draft-mistake.ts';
import { placeOfGreatest } from '../../geometry/greatest.ts';
import { noControlPoints, noCubic, place, pullBack } from '../compile/control-points.ts';
import { type Equations, LEAST_CURVATURE_SCALE } from '../compile/equations.ts';
import { type Jet, jetAt, noJet, spread } from '../compile/jet.ts';
import { finite, type Slots } from '../compile/slots.ts';
import { cubicNamed } from './no-inflection.ts';
import type { RelationOf } from './relation-of.ts';

/** Pieces of a cubic that are watched each on its own, so that several tight places can be kept at bay at once. */
const PIECES = 4;
/** Looks into each piece before its tightest place is narrowed down. */
const LOOKS = 8;

/** Room for what is worked out within one evaluation, shared by all curves: nothing is kept in it from one to the next. */
const p = noCubic();
const by = noControlPoints();
const jet = noJet();
const byJet = noJet();

/** The square of the curvature of `p`, which is greatest where its size is. */
function size(t: number): number {
  jetAt(p, t, jet);
  return squareOf(jet);
}

/** The sign of the slope of that, and more. */
function growth(t: number): number {
  jetAt(p, t, jet);
  return growthOf(jet);
}

/**
 * 1/radius less the greatest curvature, in size, on each quarter of a cubic's parameter (1/mm). By the envelope
 * theorem the derivative of a greatest value is that of the value at its own fixed place.
 */
export function leastRadius(relation: RelationOf<'least radius'>, slots: Slots): Equations {
  const { name } = relation;
  const radius = finite(relation.mm, name);
  if (radius <= 0) throw new DraftMistake(`“${name}” needs a radius above zero, not ${radius}.`, [name]);
  const curve = cubicNamed(slots, relation.curve, name);
  return {
    name,
    goal: 'not negative',
    unit: '1/mm',
    scale: Math.max(radius * radius, LEAST_CURVATURE_SCALE),
    rows: PIECES,
    elements: [
      {
        slots: curve.slots,
        linear: false,
        evaluate: (x, values, jacobian) => {
          place(x, curve, p);
          for (let piece = 0; piece < PIECES; piece++) {
            const t = placeOfGreatest(size, growth, piece / PIECES, (piece + 1) / PIECES, LOOKS);
            jetAt(p, t, jet);
            const bent = curvatureOf(jet);
            curvatureBy(jet, bent, -Math.sign(bent), byJet);
            spread(byJet, t, by);
            pullBack(p, by, 1, jacobian, 8 * piece);
            values[piece] = 1 / radius - Math.abs(bent);
          }
        },
      },
    ],
  };
}

function curvatureOf({ vx, vy, ax, ay }: Jet): number {
  const square = vx * vx + vy * vy;
  return (vx * ay - vy * ax) / (square * Math.sqrt(square));
}

function squareOf({ vx, vy, ax, ay }: Jet): number {
  const square = vx * vx + vy * vy;
  const turning = vx * ay - vy * ax;
  return (turning * turning) / (square * square * square);
}

/** The derivative of the curvature's size by the parameter, times the speed, which is positive, to the fifth power. */
function growthOf({ vx, vy, ax, ay, jx, jy }: Jet): number {
  const turning = vx * ay - vy * ax;
  const growing = (vx * jy - vy * jx) * (vx * vx + vy * vy) - 3 * turning * (vx * ax + vy * ay);
  return turning < 0 ? -growing : growing;
}

/** Writes the derivatives of `sign` times the curvature by the jet. */
function curvatureBy({ vx, vy, ax, ay }: Jet, bent: number, sign: number, into: Jet): void {
  const square = vx * vx + vy * vy;
  const cube = square * Math.sqrt(square);
  into.vx = sign * (ay / cube - (3 * bent * vx) / square);
  into.vy = sign * (-ax / cube - (3 * bent * vy) / square);
  into.ax = (sign * -vy) / cube;
  into.ay = (sign * vx) / cube;
  into.jx = 0;
  into.jy = 0;
}
