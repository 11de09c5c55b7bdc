import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ControlPoints, noControlPoints } from '../../../engine/constraints/compile/control-points.ts';
import { type Jet, jetAt, noJet, spread } from '../../../engine/constraints/compile/jet.ts';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { derivativeAt, secondDerivativeAt } from '../../../engine/geometry/evaluate.ts';
import { uniform } from '../../uniform.ts';

const number = uniform(-100, 100);
const points: fc.Arbitrary<ControlPoints> = fc.record({
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  x3: number,
  y3: number,
});
const jets: fc.Arbitrary<Jet> = fc.record({
  vx: number,
  vy: number,
  ax: number,
  ay: number,
  jx: number,
  jy: number,
});
const parameter = uniform(0, 1);

const cubicOf = ({ x0, y0, x1, y1, x2, y2, x3, y3 }: ControlPoints): Cubic => ({
  kind: 'cubic',
  from: { x: x0, y: y0 },
  handle1: { x: x1, y: y1 },
  handle2: { x: x2, y: y2 },
  to: { x: x3, y: y3 },
});

const product = <T extends object>(a: T, b: T): number =>
  Object.entries(a).reduce((sum, [key, value]) => sum + value * (b[key as keyof T] as number), 0);

describe('the derivatives of a cubic at a place', () => {
  it('are those of the curve', () => {
    fc.assert(
      fc.property(points, parameter, (p, t) => {
        const jet = noJet();
        jetAt(p, t, jet);
        const [first, second] = [derivativeAt(cubicOf(p), t), secondDerivativeAt(cubicOf(p), t)];
        expect([jet.vx, jet.vy]).toEqual([expect.closeTo(first.x, 9), expect.closeTo(first.y, 9)]);
        expect([jet.ax, jet.ay]).toEqual([expect.closeTo(second.x, 9), expect.closeTo(second.y, 9)]);
        // The second derivative changes evenly, by the third.
        const [start, end] = [secondDerivativeAt(cubicOf(p), 0), secondDerivativeAt(cubicOf(p), 1)];
        expect([jet.jx, jet.jy]).toEqual([
          expect.closeTo(end.x - start.x, 8),
          expect.closeTo(end.y - start.y, 8),
        ]);
      }),
    );
  });

  // A linear map and its adjoint: <jet of p, by> = <p, spread of by>.
  it('are spread to the control points by the chain rule', () => {
    fc.assert(
      fc.property(points, jets, parameter, (p, by, t) => {
        const [jet, into] = [noJet(), noControlPoints()];
        jetAt(p, t, jet);
        spread(by, t, into);
        expect(Math.abs(product(jet, by) - product(p, into))).toBeLessThan(1e-6);
      }),
    );
  });
});
