import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../engine/constraints/diagnose.ts';
import type { Solution } from '../../../engine/constraints/solution.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { placed } from './answers.ts';
import { type Known, knownSketch } from './random-sketch.ts';

describe('random well-posed sketches', () => {
  it('solve to 1e-6 mm, a thousand of them, from first guesses up to a fifth off', () => {
    fc.assert(
      fc.property(knownSketch(0.2, true), ({ sketch, curves }) => {
        const answer = solve(sketch);
        expect(answer.status).toBe('solved');
        expectHeld(sketch, curves, answer);
      }),
      { numRuns: 1000 },
    );
  });

  it('come back to the points they were measured from when the first guess is near', () => {
    fc.assert(
      fc.property(knownSketch(0.01, true), ({ sketch, truth }) => {
        const answer = solve(sketch);
        for (const [name, at] of Object.entries(truth))
          expect(distance(placed(answer, name), at)).toBeLessThan(1e-5);
      }),
      { numRuns: 150 },
    );
  });

  it('have no freedom left and say nothing twice', () => {
    fc.assert(
      fc.property(knownSketch(0.01, true), ({ sketch }) => {
        expect(diagnose(sketch, solve(sketch))).toEqual({
          degreesOfFreedom: 0,
          adrift: [],
          redundant: [],
          conflicting: [],
          free: [],
        });
      }),
      { numRuns: 60 },
    );
  });

  it('give the same answer to the last bit each time', () => {
    fc.assert(
      fc.property(knownSketch(0.2, true), ({ sketch }) => {
        expect(JSON.stringify(solve(sketch))).toBe(JSON.stringify(solve(structuredClone(sketch))));
      }),
      { numRuns: 50 },
    );
  });
});

/** Measures the answer again, without the engine's own residuals. */
function expectHeld(sketch: Known['sketch'], curves: Known['curves'], answer: Solution): void {
  for (const relation of sketch.relations) {
    if (relation.kind === 'distance') {
      const apart = distance(placed(answer, relation.a), placed(answer, relation.b));
      expect(Math.abs(apart - relation.mm)).toBeLessThan(1e-6);
    } else if (relation.kind === 'heading') {
      const [a, b] = [placed(answer, relation.a), placed(answer, relation.b)];
      const off = Math.atan2(b.y - a.y, b.x - a.x) - relation.angle;
      expect(Math.abs(Math.sin(off))).toBeLessThan(1e-8);
      expect(Math.cos(off)).toBeGreaterThan(0);
    }
  }
  for (const [name, truth] of Object.entries(curves)) {
    const curve = answer.curves[name];
    expect(curve && Math.abs(arcLength(curve, 1e-9) - arcLength(truth, 1e-9))).toBeLessThan(1e-6);
  }
}
