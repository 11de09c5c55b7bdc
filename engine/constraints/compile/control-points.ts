import type { CubicSlots } from './slots.ts';

/** The four control points of a cubic, or the derivatives of something by them. Mutable, for reuse. */
export interface ControlPoints {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  x3: number;
  y3: number;
}

export const noControlPoints = (): ControlPoints => ({
  x0: 0,
  y0: 0,
  x1: 0,
  y1: 0,
  x2: 0,
  y2: 0,
  x3: 0,
  y3: 0,
});

/** Writes the control points of a cubic at the values `x`. */
export function place(x: Float64Array, { slots }: CubicSlots, into: ControlPoints): void {
  const startAngle = x[slots[4]] as number;
  const startLength = x[slots[5]] as number;
  const endAngle = x[slots[6]] as number;
  const endLength = x[slots[7]] as number;
  into.x0 = x[slots[0]] as number;
  into.y0 = x[slots[1]] as number;
  into.x3 = x[slots[2]] as number;
  into.y3 = x[slots[3]] as number;
  into.x1 = into.x0 + startLength * Math.cos(startAngle);
  into.y1 = into.y0 + startLength * Math.sin(startAngle);
  into.x2 = into.x3 - endLength * Math.cos(endAngle);
  into.y2 = into.y3 - endLength * Math.sin(endAngle);
}

/**
 * Chain rule: turns derivatives by control points into derivatives by the cubic's eight slots, written from
 * `offset` on. `p` holds the control points placed at the values `x`.
 */
export function pullBack(
  x: Float64Array,
  { slots }: CubicSlots,
  p: ControlPoints,
  by: ControlPoints,
  into: Float64Array,
  offset: number,
): void {
  const startAngle = x[slots[4]] as number;
  const endAngle = x[slots[6]] as number;
  into[offset] = by.x0 + by.x1;
  into[offset + 1] = by.y0 + by.y1;
  into[offset + 2] = by.x2 + by.x3;
  into[offset + 3] = by.y2 + by.y3;
  into[offset + 4] = by.y1 * (p.x1 - p.x0) - by.x1 * (p.y1 - p.y0);
  into[offset + 5] = by.x1 * Math.cos(startAngle) + by.y1 * Math.sin(startAngle);
  into[offset + 6] = by.y2 * (p.x2 - p.x3) - by.x2 * (p.y2 - p.y3);
  into[offset + 7] = -by.x2 * Math.cos(endAngle) - by.y2 * Math.sin(endAngle);
}
