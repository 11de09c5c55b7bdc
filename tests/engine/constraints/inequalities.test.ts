import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthOf, SketchBuilder, scalarOf, yOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { curvatureAt } from '../../../engine/geometry/evaluate.ts';
import { uniform } from '../../uniform.ts';
import { placed, valued } from './answers.ts';

/** Places at which a curve is looked at. */
const PLACES = Array.from({ length: 401 }, (_, i) => i / 400);

const curvatures = (curve: Curve | undefined): readonly number[] =>
  PLACES.map((t) => (curve ? curvatureAt(curve, t) : NaN));

describe('bounds', () => {
  it('hold where a wish pulls against them', () => {
    const draw = new SketchBuilder();
    draw.length('dart', 20, { min: 5, max: 30 });
    draw.length('other dart', 20, { min: 5, max: 30 });
    draw.relation({
      kind: 'sum',
      name: 'intake',
      terms: [scalarOf('dart'), scalarOf('other dart')],
      value: 40,
    });
    draw.wish({ kind: 'near', name: 'wide', terms: [scalarOf('dart')], value: 90, weight: 1 });
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(valued(answer, 'dart')).toBeCloseTo(30, 12);
    expect(valued(answer, 'dart')).toBeLessThanOrEqual(30);
    expect(valued(answer, 'other dart')).toBeCloseTo(10, 9);
  });

  it('are never left by whatever comes to rest on them, be it by rounding', () => {
    fc.assert(
      fc.property(
        uniform(3, 60),
        uniform(0.1, 40),
        uniform(0.1, 90),
        fc.constantFrom(1, -1),
        (limit, off, pull, side) => {
          const draw = new SketchBuilder();
          draw.length('dart', limit - side * off, side === 1 ? { max: limit } : { min: limit });
          draw.length('rest', 20);
          draw.relation({
            kind: 'sum',
            name: 'intake',
            terms: [scalarOf('dart'), scalarOf('rest', 1.7)],
            value: 80,
          });
          draw.wish({
            kind: 'near',
            name: 'far',
            terms: [scalarOf('dart')],
            value: limit + side * pull,
            weight: 0.3,
          });
          const within = side * (limit - valued(solve(draw.sketch()), 'dart'));
          expect(within).toBeGreaterThanOrEqual(0);
          expect(within).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('let go of a scalar that no longer pulls', () => {
    const draw = new SketchBuilder();
    draw.length('dart', 30, { min: 5, max: 30 });
    draw.wish({ kind: 'near', name: 'wish', terms: [scalarOf('dart')], value: 12, weight: 1 });
    // The pull towards the first guess is a hundred-millionth of the wish's.
    expect(valued(solve(draw.sketch()), 'dart')).toBeCloseTo(12, 5);
  });

  it('share what a sum leaves over by the weights of the wishes, within their limits', () => {
    // Least (a-10)^2/2 + 2(b-10)^2/2 + 4(c-10)^2/2 with a + b + c = 60 and a <= 20: by hand, b - 10 = 2 (c - 10).
    const draw = new SketchBuilder();
    draw.length('a', 10, { max: 20 });
    draw.length('b', 10);
    draw.length('c', 10);
    draw.relation({
      kind: 'sum',
      name: 'intake',
      terms: ['a', 'b', 'c'].map((name) => scalarOf(name)),
      value: 60,
    });
    draw.wish(
      { kind: 'near', name: 'a', terms: [scalarOf('a')], value: 10, weight: 1 },
      { kind: 'near', name: 'b', terms: [scalarOf('b')], value: 10, weight: 2 },
      { kind: 'near', name: 'c', terms: [scalarOf('c')], value: 10, weight: 4 },
    );
    const answer = solve(draw.sketch());
    expect(valued(answer, 'a')).toBeCloseTo(20, 12);
    expect(valued(answer, 'b')).toBeCloseTo(10 + 40 / 3, 6);
    expect(valued(answer, 'c')).toBeCloseTo(10 + 20 / 3, 6);
  });
});

describe('no inflection', () => {
  it('keeps a curve hollow that its length alone would let swing', () => {
    fc.assert(
      fc.property(
        uniform(-0.5, 0.7),
        fc.double({ min: 0.2, max: 1.2, noNaN: true }),
        fc.constantFrom(1 as const, -1 as const),
        (lean, end, turns) => {
          const draw = new SketchBuilder();
          draw.fixed('a', { x: 0, y: 0 });
          draw.fixed('b', { x: 100, y: 0 });
          const curve = draw.curve('edge', 'a', 'b', {
            start: { angle: turns * lean },
            end: { angle: turns * end },
          });
          draw.relation({ kind: 'no inflection', name: 'hollow', curve, turns });
          draw.wish(
            {
              kind: 'near',
              name: 'start',
              terms: [scalarOf('edge start angle')],
              value: turns * lean,
              weight: 1e4,
            },
            {
              kind: 'near',
              name: 'end',
              terms: [scalarOf('edge end angle')],
              value: turns * end,
              weight: 1e4,
            },
          );
          const answer = solve(draw.sketch());
          expect(answer.status).toBe('solved');
          // Flatter than a circle of a kilometre is straight.
          for (const k of curvatures(answer.curves[curve])) expect(turns * k).toBeGreaterThan(-1e-6);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('leaves a curve that turns by more than half a circle as it is', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 40, y: 0 });
    const curve = draw.curve('loop', 'a', 'b', {
      start: { angle: -1.9, length: 60 },
      end: { angle: 1.9, length: 60 },
      handles: [0.1, 5],
    });
    draw.relation({ kind: 'no inflection', name: 'round', curve, turns: 1 });
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(Math.min(...curvatures(answer.curves[curve]))).toBeGreaterThan(0);
    expect(valued(answer, 'loop start length')).toBeCloseTo(60, 9);
    expect(valued(answer, 'loop start angle')).toBeCloseTo(-1.9, 9);
  });
});

describe('least radius', () => {
  it('opens a neckline that is too tight, and only as far as it must', () => {
    const draw = new SketchBuilder();
    draw.fixed('side neck', { x: 80, y: 0 });
    draw.point('centre', { x: 0, y: 60 }, 'y');
    draw.fixedAngle('square to the fold', Math.PI);
    const curve = draw.curve('neckline', 'side neck', 'centre', {
      start: { angle: Math.PI / 2, length: 55 },
      end: { angle: 'square to the fold', length: 60 },
    });
    draw.relation({ kind: 'least radius', name: 'room to turn', curve, mm: 45 });
    draw.wish({ kind: 'near', name: 'depth', terms: [yOf('centre')], value: 60, weight: 1 });
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    const tightest = Math.max(...curvatures(answer.curves[curve]).map(Math.abs));
    expect(tightest).toBeLessThan((1 / 45) * (1 + 1e-6));
    expect(tightest).toBeGreaterThan((1 / 45) * (1 - 1e-3));
  });

  it('says nothing where there is room', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 100, y: 0 });
    const curve = draw.curve('edge', 'a', 'b', { start: { angle: -0.3 }, end: { angle: 0.3 } });
    draw.relation(
      { kind: 'least radius', name: 'room', curve, mm: 30 },
      { kind: 'length', name: 'edge', terms: [lengthOf([curve])], mm: 102 },
    );
    const answer = solve(draw.sketch());
    expect(answer.status).toBe('solved');
    expect(answer.residuals.find(({ relation }) => relation === 'room')?.error).toBe(0);
    expect(placed(answer, 'b')).toEqual({ x: 100, y: 0 });
  });
});
