import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';

/**
 * What every kind of paper understands. Whoever draws speaks to a pen in millimetres; digits, units and the
 * direction of the axes are the pen's business, so rounding happens in one place only.
 */
export interface Pen {
  readonly moveTo: (to: Point) => void;
  readonly lineTo: (to: Point) => void;
  readonly cubicTo: (handle1: Point, handle2: Point, to: Point) => void;
  readonly close: () => void;
}

/** Draws a chain of curves, each starting where the last one ended, and closes it when asked. */
export function trace(pen: Pen, curves: readonly Curve[], closed = false): void {
  const first = curves[0];
  if (!first) return;
  pen.moveTo(first.from);
  for (const curve of curves) {
    if (curve.kind === 'line') pen.lineTo(curve.to);
    else pen.cubicTo(curve.handle1, curve.handle2, curve.to);
  }
  if (closed) pen.close();
}
