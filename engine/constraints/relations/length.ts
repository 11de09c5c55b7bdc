import { arcLengthGradient } from '../../geometry/arc-length-gradient.ts';
import { ARC_LENGTH } from '../../geometry/tolerance.ts';
import { type ControlPoints, noControlPoints, noCubic, place, pullBack } from '../compile/control-points.ts';
import type { Element, Equations } from '../compile/equations.ts';
import { type CubicSlots, curveSlots, finite, type LineSlots, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** Lengths are taken ten times as exactly as a relation between them must hold. */
const ACCURACY = ARC_LENGTH / 10;

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

function cubicLength(curve: CubicSlots, times: number, accuracy: number): Element {
  const p = noCubic();
  const by = noControlPoints();
  return {
    slots: curve.slots,
    linear: false,
    evaluate: (x, values, jacobian) => {
      place(x, curve, p);
      values[0] = times * lengthAndDerivatives(p, by, accuracy);
      pullBack(p, by, times, jacobian, 0);
    },
  };
}

function lengthAndDerivatives(p: ControlPoints, by: ControlPoints, accuracy: number): number {
  const { length, from, handle1, handle2, to } = arcLengthGradient(
    {
      kind: 'cubic',
      from: { x: p.x0, y: p.y0 },
      handle1: { x: p.x1, y: p.y1 },
      handle2: { x: p.x2, y: p.y2 },
      to: { x: p.x3, y: p.y3 },
    },
    accuracy,
  );
  by.x0 = from.x;
  by.y0 = from.y;
  by.x1 = handle1.x;
  by.y1 = handle1.y;
  by.x2 = handle2.x;
  by.y2 = handle2.y;
  by.x3 = to.x;
  by.y3 = to.y;
  return length;
}
