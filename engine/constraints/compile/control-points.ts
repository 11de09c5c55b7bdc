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

/** A cubic's control points with the unit headings at its ends. */
export interface PlacedCubic extends ControlPoints {
  startX: number;
  startY: number;
  endX: number;
  endY: number;
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

export const noCubic = (): PlacedCubic => ({
  x0: 0,
  y0: 0,
  x1: 0,
  y1: 0,
  x2: 0,
  y2: 0,
  x3: 0,
  y3: 0,
  startX: 1,
  startY: 0,
  endX: 1,
  endY: 0,
});

/** Writes the control points and headings of a cubic at the values `x`. */
export function place(x: Float64Array, { slots }: CubicSlots, into: PlacedCubic): void {
  const startAngle = x[slots[4]] as number;
  const startLength = x[slots[5]] as number;
  const endAngle = x[slots[6]] as number;
  const endLength = x[slots[7]] as number;
  into.startX = Math.cos(startAngle);
  into.startY = Math.sin(startAngle);
  into.endX = Math.cos(endAngle);
  into.endY = Math.sin(endAngle);
  into.x0 = x[slots[0]] as number;
  into.y0 = x[slots[1]] as number;
  into.x3 = x[slots[2]] as number;
  into.y3 = x[slots[3]] as number;
  into.x1 = into.x0 + startLength * into.startX;
  into.y1 = into.y0 + startLength * into.startY;
  into.x2 = into.x3 - endLength * into.endX;
  into.y2 = into.y3 - endLength * into.endY;
}

/**
 * Chain rule: turns `factor` times derivatives by the control points `p` into derivatives by the cubic's eight slots,
 * written from `offset` on.
 */
export function pullBack(
  p: PlacedCubic,
  by: ControlPoints,
  factor: number,
  into: Float64Array,
  offset: number,
): void {
  const x1 = factor * by.x1;
  const y1 = factor * by.y1;
  const x2 = factor * by.x2;
  const y2 = factor * by.y2;
  into[offset] = factor * by.x0 + x1;
  into[offset + 1] = factor * by.y0 + y1;
  into[offset + 2] = x2 + factor * by.x3;
  into[offset + 3] = y2 + factor * by.y3;
  into[offset + 4] = y1 * (p.x1 - p.x0) - x1 * (p.y1 - p.y0);
  into[offset + 5] = x1 * p.startX + y1 * p.startY;
  into[offset + 6] = y2 * (p.x2 - p.x3) - x2 * (p.y2 - p.y3);
  into[offset + 7] = -x2 * p.endX - y2 * p.endY;
}

/**
 * Adds to the lower triangle of `into` (8 x 8) the second derivatives, by the cubic's slots, of a sum of its control
 * points with the weights `by`: they come from the turning of the handles alone.
 */
export function addHandleCurvature(p: PlacedCubic, by: ControlPoints, into: Float64Array): void {
  into[36] = (into[36] as number) - by.x1 * (p.x1 - p.x0) - by.y1 * (p.y1 - p.y0);
  into[44] = (into[44] as number) - by.x1 * p.startY + by.y1 * p.startX;
  into[54] = (into[54] as number) - by.x2 * (p.x2 - p.x3) - by.y2 * (p.y2 - p.y3);
  into[62] = (into[62] as number) + by.x2 * p.endY - by.y2 * p.endX;
}

/** Adds `factor` times the product of two rows of eight, made symmetric, to the lower triangle of `into` (8 x 8). */
export function addProduct(one: Float64Array, other: Float64Array, factor: number, into: Float64Array): void {
  for (let k = 0; k < 8; k++) {
    const a = (factor * (one[k] as number)) / 2;
    const b = (factor * (other[k] as number)) / 2;
    for (let m = 0; m <= k; m++)
      into[8 * k + m] = (into[8 * k + m] as number) + a * (other[m] as number) + b * (one[m] as number);
  }
}
