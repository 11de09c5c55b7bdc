import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { arcLength, parameterAtLength } from '../../../engine/geometry/arc-length.ts';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { derivativeAt } from '../../../engine/geometry/evaluate.ts';
import { part, reversed, split } from '../../../engine/geometry/split.ts';
import { magnitude } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { anyCubic, anyCurve, cubic, line, seamCubic } from './generators.ts';

/** Cubics with known lengths, from the integral of their speed. */
const closedForms: readonly (readonly [string, Cubic, number])[] = [
  ['the cubic with speed 1 + t^2', cubic(0, 0, 1 / 3, 0, 2 / 3, 1 / 3, 2 / 3, 1), 4 / 3],
  ['the cubic with speed 3 (1 - 2 t (1 - t))', cubic(0, 0, 0, 1, 1, 1, 1, 0), 2],
  [
    'the semicubical parabola, which starts without speed',
    cubic(0, 0, 0, 0, 1 / 3, 0, 1, 1),
    (13 * Math.sqrt(13) - 8) / 27,
  ],
  ['the parabola y = x^2', cubic(0, 0, 1 / 3, 0, 2 / 3, 1 / 3, 1, 1), Math.sqrt(5) / 2 + Math.asinh(2) / 4],
  ['a straight cubic walked evenly', cubic(0, 0, 1, 0, 2, 0, 3, 0), 3],
  ['a straight cubic without handles', cubic(0, 0, 0, 0, 100, 0, 100, 0), 100],
  // x = 3 t (1 - t)^2 100 - 3 t^2 (1 - t) 50 + 30 t^3 turns back twice; its turning points at t = (500 -+ sqrt 58000) / 960.
  ['a straight cubic that turns back twice', cubic(0, 0, 100, 0, -50, 0, 30, 0), 90.62608381683626],
];

describe('arcLength', () => {
  for (const [what, curve, length] of closedForms) {
    it(`measures ${what} to every accuracy asked for`, () => {
      for (const accuracy of [1e-2, 1e-4, 1e-6, 1e-9, 1e-12])
        expect(Math.abs(arcLength(curve, accuracy) - length)).toBeLessThanOrEqual(accuracy + 1e-13 * length);
    });
  }

  it('agrees with lengths without closed form computed elsewhere to ten figures', () => {
    // Quadratic (0,0) (1,2) (2,0), raised to a cubic, and (0,0) (1,2) (3,3) (4,0): adaptive quadrature in extended
    // precision. The quarter circle: handles 4/3 tan(pi/8).
    const k = (4 / 3) * Math.tan(Math.PI / 8);
    expect(arcLength(cubic(0, 0, 2 / 3, 4 / 3, 4 / 3, 4 / 3, 2, 0), 1e-12)).toBeCloseTo(2.9578857151, 9);
    expect(arcLength(cubic(0, 0, 1, 2, 3, 3, 4, 0), 1e-12)).toBeCloseTo(5.8299272246, 9);
    expect(arcLength(cubic(1, 0, 1, k, k, 1, 0, 1), 1e-12)).toBeCloseTo(1.5710166981, 9);
  });

  it('keeps each accuracy on any cubic, loops and cusps included', () => {
    const accuracies = fc.constantFrom(10, 1, 1e-1, 1e-3, 1e-6, 1e-9);
    fc.assert(
      fc.property(anyCubic, accuracies, (curve, accuracy) => {
        expect(Math.abs(arcLength(curve, accuracy) - bySimpson(curve))).toBeLessThanOrEqual(accuracy + 2e-5);
        expect(Math.abs(arcLength(curve, accuracy) - arcLength(curve, 1e-11))).toBeLessThanOrEqual(accuracy);
      }),
      { numRuns: 150 },
    );
  });

  it('keeps 1e-6 mm beside a cusp that is nearly reached', () => {
    for (const gap of [1, 1e-2, 1e-4, 1e-8, 1e-12, 0]) {
      const curve = cubic(0, 0, 100, 100 + gap, 0, 100, 100, 0);
      const [a, b] = split(curve, 0.5);
      expect(Math.abs(arcLength(curve, 1e-6) - arcLength(a, 1e-11) - arcLength(b, 1e-11))).toBeLessThan(1e-6);
    }
  });

  it('agrees with svg-path-properties', () => {
    fc.assert(
      fc.property(seamCubic, (curve) => {
        const { from, handle1, handle2, to } = curve;
        const path = `M${from.x} ${from.y}C${handle1.x} ${handle1.y} ${handle2.x} ${handle2.y} ${to.x} ${to.y}`;
        // It integrates with 24 nodes and parses decimals: good to about 1e-3 mm here.
        expect(arcLength(curve, 1e-9)).toBeCloseTo(new svgPathProperties(path).getTotalLength(), 2);
      }),
      { numRuns: 100 },
    );
  });

  it('adds up over parts and is the same from either end', () => {
    fc.assert(
      fc.property(anyCurve, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (curve, t) => {
        const whole = arcLength(curve, 1e-9);
        const parts = split(curve, t).map((piece) => arcLength(piece, 1e-9));
        expect(Math.abs(whole - (parts[0] ?? 0) - (parts[1] ?? 0))).toBeLessThan(1e-8);
        expect(Math.abs(whole - arcLength(reversed(curve), 1e-9))).toBeLessThan(1e-8);
      }),
    );
  });

  it('gives nothing for a curve without extent', () => {
    expect(arcLength(cubic(3, 4, 3, 4, 3, 4, 3, 4), 1e-9)).toBe(0);
    expect(arcLength(line(3, 4, 3, 4), 1e-9)).toBe(0);
  });
});

describe('parameterAtLength', () => {
  it('finds the place that has the length asked for', () => {
    fc.assert(
      fc.property(anyCurve, uniform(0, 1), fc.constantFrom(1e-2, 1e-6, 1e-9), (curve, share, accuracy) => {
        const s = share * arcLength(curve, 1e-11);
        const t = parameterAtLength(curve, s, accuracy);
        const reached = t > 0 ? arcLength(part(curve, 0, t), 1e-11) : 0;
        expect(Math.abs(reached - s)).toBeLessThanOrEqual(accuracy + 1e-10);
      }),
    );
  });

  it('stays at the ends for lengths beyond them', () => {
    const curve = cubic(0, 0, 10, 20, 30, 20, 40, 0);
    expect(parameterAtLength(curve, -1, 1e-6)).toBe(0);
    expect(parameterAtLength(curve, 0, 1e-6)).toBe(0);
    expect(parameterAtLength(curve, 1000, 1e-6)).toBe(1);
  });

  it('leaves a start without speed', () => {
    const curve = cubic(0, 0, 0, 0, 100 / 3, 0, 100, 100);
    const t = parameterAtLength(curve, 1e-3, 1e-9);
    expect(arcLength(part(curve, 0, t), 1e-12)).toBeCloseTo(1e-3, 8);
  });
});

/** Length by Simpson's rule in 4000 steps: slow, plain, and independent of the quadrature it checks. */
function bySimpson(curve: Cubic): number {
  const steps = 4000;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * magnitude(derivativeAt(curve, i / steps));
  }
  return sum / (3 * steps);
}
