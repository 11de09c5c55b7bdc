import { arcLengthGradient } from '../../geometry/arc-length-gradient.ts';
import { ARC_LENGTH } from '../../geometry/tolerance.ts';
import { type ControlPoints, noControlPoints, place, pullBack } from '../compile/control-points.ts';
import type { Equations } from '../compile/equations.ts';
import {
  type CubicSlots,
  type CurveSlots,
  curveSlots,
  finite,
  type LineSlots,
  type Slots,
} from '../compile/slots.ts';
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
  const measured = parts.map(({ curve, times }) => ({
    measure: measureOf(curve, parts.length),
    times,
    count: curve.slots.length,
  }));
  return {
    name,
    goal: 'zero',
    unit: 'mm',
    scale: 1,
    slots: parts.flatMap(({ curve }) => curve.slots),
    rows: 1,
    evaluate: (x, values, jacobian) => {
      let sum = -mm;
      let offset = 0;
      for (const { measure, times, count } of measured) {
        sum += times * measure(x, jacobian, offset);
        for (let k = offset; k < offset + count; k++) jacobian[k] = times * (jacobian[k] as number);
        offset += count;
      }
      values[0] = sum;
    },
  };
}

/** A curve's length at `x`; its derivatives by the curve's slots are written from `offset` on. */
type Measure = (x: Float64Array, jacobian: Float64Array, offset: number) => number;

const measureOf = (curve: CurveSlots, parts: number): Measure =>
  curve.kind === 'line' ? lineMeasure(curve) : cubicMeasure(curve, ACCURACY / parts);

function lineMeasure({ slots: [fx, fy, tx, ty] }: LineSlots): Measure {
  return (x, jacobian, offset) => {
    const dx = (x[tx] as number) - (x[fx] as number);
    const dy = (x[ty] as number) - (x[fy] as number);
    const length = Math.sqrt(dx * dx + dy * dy);
    const ux = length === 0 ? 1 : dx / length;
    const uy = length === 0 ? 0 : dy / length;
    jacobian[offset] = -ux;
    jacobian[offset + 1] = -uy;
    jacobian[offset + 2] = ux;
    jacobian[offset + 3] = uy;
    return length;
  };
}

function cubicMeasure(curve: CubicSlots, accuracy: number): Measure {
  const p = noControlPoints();
  const by = noControlPoints();
  return (x, jacobian, offset) => {
    place(x, curve, p);
    const length = lengthAndDerivatives(p, by, accuracy);
    pullBack(x, curve, p, by, jacobian, offset);
    return length;
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
