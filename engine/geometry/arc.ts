import type { Cubic } from './curve.ts';
import type { Point } from './point.ts';
import { UNIT_ROUNDING } from './tolerance.ts';
import { angleOf, heading, magnitude, type Vector } from './vector.ts';

/** Cubics that follow a circular arc, and their largest distance from it (mm). */
export interface ArcFit {
  readonly curves: readonly Cubic[];
  readonly deviation: number;
}

/**
 * The arc about `centre` that starts at centre + spoke and turns by `turn` (radians, clockwise as drawn when
 * positive), as few equal cubics as keep it within `tolerance` (mm). With handles of 4/3 tan(angle/4) radii a cubic
 * of that angle lies outside the circle by at most 2/27 sin^6(angle/4) / cos^2(angle/4) radii.
 */
export function arc(centre: Point, spoke: Vector, turn: number, tolerance: number): ArcFit {
  const radius = magnitude(spoke);
  let count = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - UNIT_ROUNDING));
  while (strayOf(turn / count) * radius > tolerance) count++;
  const step = turn / count;
  const handle = (4 / 3) * Math.tan(step / 4);
  const start = angleOf(spoke);
  const at = (angle: number, ahead: number): Point => {
    const h = heading(angle);
    return {
      x: centre.x + radius * (h.x - ahead * h.y),
      y: centre.y + radius * (h.y + ahead * h.x),
    };
  };
  const curves = Array.from({ length: count }, (_, i): Cubic => {
    const a = start + i * step;
    const b = a + step;
    return { kind: 'cubic', from: at(a, 0), handle1: at(a, handle), handle2: at(b, -handle), to: at(b, 0) };
  });
  return { curves, deviation: strayOf(step) * radius };
}

function strayOf(angle: number): number {
  const s = Math.sin(angle / 4);
  const c = Math.cos(angle / 4);
  return ((2 / 27) * s ** 6) / (c * c);
}
