import type { ControlPoints } from './control-points.ts';

/** The first three derivatives of a cubic by its parameter at one place, or derivatives of something by them. */
export interface Jet {
  vx: number;
  vy: number;
  ax: number;
  ay: number;
  jx: number;
  jy: number;
}

export const noJet = (): Jet => ({ vx: 0, vy: 0, ax: 0, ay: 0, jx: 0, jy: 0 });

/** Writes the derivatives of a cubic at t. */
export function jetAt(p: ControlPoints, t: number, into: Jet): void {
  const u = 1 - t;
  const x01 = 3 * (p.x1 - p.x0);
  const y01 = 3 * (p.y1 - p.y0);
  const x12 = 3 * (p.x2 - p.x1);
  const y12 = 3 * (p.y2 - p.y1);
  const x23 = 3 * (p.x3 - p.x2);
  const y23 = 3 * (p.y3 - p.y2);
  into.vx = u * u * x01 + 2 * u * t * x12 + t * t * x23;
  into.vy = u * u * y01 + 2 * u * t * y12 + t * t * y23;
  into.ax = 2 * (u * (x12 - x01) + t * (x23 - x12));
  into.ay = 2 * (u * (y12 - y01) + t * (y23 - y12));
  into.jx = 2 * (x01 - 2 * x12 + x23);
  into.jy = 2 * (y01 - 2 * y12 + y23);
}

/** Chain rule: turns derivatives by the jet at t into derivatives by the control points. */
export function spread(by: Jet, t: number, into: ControlPoints): void {
  const u = 1 - t;
  // Derivatives by the three legs of the control polygon, each three times over.
  const x01 = u * u * by.vx - 2 * u * by.ax + 2 * by.jx;
  const y01 = u * u * by.vy - 2 * u * by.ay + 2 * by.jy;
  const x12 = 2 * u * t * by.vx + 2 * (u - t) * by.ax - 4 * by.jx;
  const y12 = 2 * u * t * by.vy + 2 * (u - t) * by.ay - 4 * by.jy;
  const x23 = t * t * by.vx + 2 * t * by.ax + 2 * by.jx;
  const y23 = t * t * by.vy + 2 * t * by.ay + 2 * by.jy;
  into.x0 = -3 * x01;
  into.y0 = -3 * y01;
  into.x1 = 3 * (x01 - x12);
  into.y1 = 3 * (y01 - y12);
  into.x2 = 3 * (x12 - x23);
  into.y2 = 3 * (y12 - y23);
  into.x3 = 3 * x23;
  into.y3 = 3 * y23;
}
