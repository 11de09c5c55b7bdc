import type { Curve } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { between } from './point.ts';

/** The same curve walked from its other end. */
export function reversed(curve: Curve): Curve {
  if (curve.kind === 'line') return { kind: 'line', from: curve.to, to: curve.from };
  return {
    kind: 'cubic',
    from: curve.to,
    handle1: curve.handle2,
    handle2: curve.handle1,
    to: curve.from,
  };
}

/** The two parts of a curve before and after t (P. de Casteljau's construction). Exact. */
export function split<C extends Curve>(curve: C, t: number): readonly [C, C];
export function split(curve: Curve, t: number): readonly [Curve, Curve] {
  if (curve.kind === 'line') {
    const at = pointAt(curve, t);
    return [
      { kind: 'line', from: curve.from, to: at },
      { kind: 'line', from: at, to: curve.to },
    ];
  }
  const a = between(curve.from, curve.handle1, t);
  const b = between(curve.handle1, curve.handle2, t);
  const c = between(curve.handle2, curve.to, t);
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const at = between(ab, bc, t);
  return [
    { kind: 'cubic', from: curve.from, handle1: a, handle2: ab, to: at },
    { kind: 'cubic', from: at, handle1: bc, handle2: c, to: curve.to },
  ];
}

/** The part of a curve from t0 to t1, 0 <= t0 < t1 <= 1. Exact; whole ends are kept to the bit. */
export function part<C extends Curve>(curve: C, t0: number, t1: number): C;
export function part(curve: Curve, t0: number, t1: number): Curve {
  const upTo = t1 >= 1 ? curve : partBefore(curve, t1);
  return t0 <= 0 ? upTo : partBehind(upTo, t0 / Math.min(t1, 1));
}

/** The first of the two parts alone: to find a place at a length, hundreds are measured. */
function partBefore(curve: Curve, t: number): Curve {
  const { from } = curve;
  if (curve.kind === 'line') return { kind: 'line', from, to: pointAt(curve, t) };
  const { handle1, handle2, to } = curve;
  const a = between(from, handle1, t);
  const b = between(handle1, handle2, t);
  const ab = between(a, b, t);
  const bc = between(b, between(handle2, to, t), t);
  return { kind: 'cubic', from, handle1: a, handle2: ab, to: between(ab, bc, t) };
}

/** The second alone. */
function partBehind(curve: Curve, t: number): Curve {
  const { to } = curve;
  if (curve.kind === 'line') return { kind: 'line', from: pointAt(curve, t), to };
  const { from, handle1, handle2 } = curve;
  const b = between(handle1, handle2, t);
  const c = between(handle2, to, t);
  const ab = between(between(from, handle1, t), b, t);
  const bc = between(b, c, t);
  return { kind: 'cubic', from: between(ab, bc, t), handle1: bc, handle2: c, to };
}
