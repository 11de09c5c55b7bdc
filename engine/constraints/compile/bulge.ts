import type { CubicSlots } from './slots.ts';

/**
 * How far the far handle of a cubic stands off the tangent at one end (mm), positive where the curve turns
 * clockwise as drawn: cross(u, handle2 - from) at the start and cross(u, handle1 - to) at the end, where u is the
 * unit heading there. The curvature at that end is 2/3 of it over the near handle's length squared (Farin, Curves
 * and Surfaces for CAGD, 2002, section 10.5). Derivatives by the cubic's slots are written from `offset` on.
 */
export function bulge(
  x: Float64Array,
  curve: CubicSlots,
  end: 'start' | 'end',
  jacobian: Float64Array,
  offset: number,
): number {
  const slots: readonly number[] = curve.slots;
  // Seen from the end the roles of the two ends change over, and the far handle points the other way.
  const atStart = end === 'start';
  const side = atStart ? -1 : 1;
  const near = atStart ? 0 : 2;
  const far = 2 - near;
  const angle = atStart ? 4 : 6;
  const farAngle = 10 - angle;
  const ux = Math.cos(valueAt(x, slots, angle));
  const uy = Math.sin(valueAt(x, slots, angle));
  const wx = Math.cos(valueAt(x, slots, farAngle));
  const wy = Math.sin(valueAt(x, slots, farAngle));
  const reach = side * valueAt(x, slots, farAngle + 1);
  const dx = valueAt(x, slots, far) - valueAt(x, slots, near) + reach * wx;
  const dy = valueAt(x, slots, far + 1) - valueAt(x, slots, near + 1) + reach * wy;
  jacobian[offset + near] = uy;
  jacobian[offset + near + 1] = -ux;
  jacobian[offset + far] = -uy;
  jacobian[offset + far + 1] = ux;
  jacobian[offset + angle] = -(ux * dx + uy * dy);
  jacobian[offset + angle + 1] = 0;
  jacobian[offset + farAngle] = reach * (ux * wx + uy * wy);
  jacobian[offset + farAngle + 1] = side * (ux * wy - uy * wx);
  return ux * dy - uy * dx;
}

/** Writes `factor` times the second derivatives of the bulge by the cubic's slots: lower triangle, 8 x 8. */
export function bulgeCurvature(
  x: Float64Array,
  curve: CubicSlots,
  end: 'start' | 'end',
  factor: number,
  into: Float64Array,
): void {
  const slots: readonly number[] = curve.slots;
  const atStart = end === 'start';
  const side = atStart ? -1 : 1;
  const near = atStart ? 0 : 2;
  const far = 2 - near;
  const angle = atStart ? 4 : 6;
  const farAngle = 10 - angle;
  const ux = factor * Math.cos(valueAt(x, slots, angle));
  const uy = factor * Math.sin(valueAt(x, slots, angle));
  const wx = Math.cos(valueAt(x, slots, farAngle));
  const wy = Math.sin(valueAt(x, slots, farAngle));
  const reach = side * valueAt(x, slots, farAngle + 1);
  const dx = valueAt(x, slots, far) - valueAt(x, slots, near) + reach * wx;
  const dy = valueAt(x, slots, far + 1) - valueAt(x, slots, near + 1) + reach * wy;
  const across = ux * wy - uy * wx;
  const along = ux * wx + uy * wy;
  into.fill(0, 0, 64);
  into[8 * angle + near] = ux;
  into[8 * angle + near + 1] = uy;
  into[8 * angle + far] = -ux;
  into[8 * angle + far + 1] = -uy;
  into[9 * angle] = uy * dx - ux * dy;
  into[9 * farAngle] = -reach * across;
  into[8 * (farAngle + 1) + farAngle] = side * along;
  setBelow(into, angle, farAngle, reach * across);
  setBelow(into, angle, farAngle + 1, -side * along);
}

/** Sets the entry of two slots in a lower triangle, 8 x 8. */
function setBelow(into: Float64Array, one: number, other: number, value: number): void {
  into[one > other ? 8 * one + other : 8 * other + one] = value;
}

const valueAt = (x: Float64Array, slots: readonly number[], k: number): number =>
  x[slots[k] as number] as number;
