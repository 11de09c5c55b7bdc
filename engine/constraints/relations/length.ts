import { arcLengthGradient } from '../../geometry/arc-length-gradient.ts';
import { gaussPairs } from '../../geometry/gauss-legendre.ts';
import { ARC_LENGTH } from '../../geometry/tolerance.ts';
import {
  addHandleCurvature,
  addProduct,
  type ControlPoints,
  noControlPoints,
  noCubic,
  place,
  pullBack,
} from '../compile/control-points.ts';
import type { Element, Equations } from '../compile/equations.ts';
import { jetAt, noJet, spread } from '../compile/jet.ts';
import { type CubicSlots, curveSlots, finite, type LineSlots, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** Lengths are taken ten times as exactly as a relation between them must hold. */
const ACCURACY = ARC_LENGTH / 10;
/** First derivatives that only enter second ones. */
const ROUGHLY = 1e-3;
/** Gauss nodes and weights on [0, 1], by turns: for second derivatives, which steer steps but settle nothing. */
const NODES = [...gaussPairs(3)].flatMap((node, i, rule) => {
  const half = (rule[i + 1] ?? 0) / 2;
  return i % 2 === 1 ? [] : [(1 - node) / 2, half, (1 + node) / 2, half];
});

/** A weighted sum of arc lengths, less its value (mm). */
export function edgeLengths(relation: RelationOf<'length'>, slots: Slots): Equations {
  const { name, terms } = relation;
  const mm = finite(relation.mm, name);
  const parts = terms.flatMap((term) =>
    term.curves.map((curve) => ({ curve: curveSlots(slots, curve, name), times: finite(term.times, name) })),
  );
  return {
    name,
    goal: 'zero',
    unit: 'mm',
    scale: 1,
    rows: 1,
    elements: [
      constant(-mm),
      ...parts.map(({ curve, times }) =>
        curve.kind === 'line' ? lineLength(curve, times) : cubicLength(curve, times, ACCURACY / parts.length),
      ),
    ],
  };
}

function constant(value: number): Element {
  return {
    slots: [],
    linear: true,
    evaluate: (_, values) => {
      values[0] = value;
    },
  };
}

function lineLength({ slots }: LineSlots, times: number): Element {
  const [fx, fy, tx, ty] = slots;
  return {
    slots,
    linear: false,
    evaluate: (x, values, jacobian) => {
      const dx = (x[tx] as number) - (x[fx] as number);
      const dy = (x[ty] as number) - (x[fy] as number);
      const length = Math.sqrt(dx * dx + dy * dy);
      const ux = length === 0 ? times : (times * dx) / length;
      const uy = length === 0 ? 0 : (times * dy) / length;
      values[0] = times * length;
      jacobian[0] = -ux;
      jacobian[1] = -uy;
      jacobian[2] = ux;
      jacobian[3] = uy;
    },
  };
}

/** Room for what is worked out within one evaluation, shared by all curves: nothing is kept in it from one to the next. */
const p = noCubic();
const by = noControlPoints();
const byNode = noControlPoints();
const jet = noJet();
const across = noJet();
const row = new Float64Array(8);

function cubicLength(curve: CubicSlots, times: number, accuracy: number): Element {
  return {
    slots: curve.slots,
    linear: false,
    evaluate: (x, values, jacobian) => {
      place(x, curve, p);
      values[0] = times * lengthAndDerivatives(p, by, accuracy);
      pullBack(p, by, times, jacobian, 0);
    },
    // A change of the curve's speed across its heading lengthens it by half its square over the speed.
    curve: (x, weights, into) => {
      place(x, curve, p);
      const factor = times * (weights[0] as number);
      lengthAndDerivatives(p, by, ROUGHLY);
      into.fill(0, 0, 64);
      for (let i = 0; i < NODES.length; i += 2) {
        const t = NODES[i] as number;
        jetAt(p, t, jet);
        const speed = Math.sqrt(jet.vx * jet.vx + jet.vy * jet.vy) || 1;
        across.vx = -jet.vy / speed;
        across.vy = jet.vx / speed;
        spread(across, t, byNode);
        pullBack(p, byNode, 1, row, 0);
        addProduct(row, row, (NODES[i + 1] as number) / speed, into);
      }
      addHandleCurvature(p, by, into);
      for (let k = 0; k < 64; k++) into[k] = factor * (into[k] as number);
    },
  };
}

function lengthAndDerivatives(at: ControlPoints, into: ControlPoints, accuracy: number): number {
  const { length, from, handle1, handle2, to } = arcLengthGradient(
    {
      kind: 'cubic',
      from: { x: at.x0, y: at.y0 },
      handle1: { x: at.x1, y: at.y1 },
      handle2: { x: at.x2, y: at.y2 },
      to: { x: at.x3, y: at.y3 },
    },
    accuracy,
  );
  into.x0 = from.x;
  into.y0 = from.y;
  into.x1 = handle1.x;
  into.y1 = handle1.y;
  into.x2 = handle2.x;
  into.y2 = handle2.y;
  into.x3 = to.x;
  into.y3 = to.y;
  return length;
}
