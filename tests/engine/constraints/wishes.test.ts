import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compiled } from '../../../engine/constraints/compile/program.ts';
import { Model } from '../../../engine/constraints/method/model.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { lengthOf, SketchBuilder, xOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { RowBasis } from '../../../engine/numeric/row-basis.ts';
import { garmentSketch } from '../../bench/garment-sketch.ts';
import { placed, valued } from './answers.ts';

/** What is left of the wishes' gradient along the directions that relations and bounds leave open, by part. */
function openGradients(sketch: Sketch): readonly number[] {
  const answer = solve(sketch);
  expect(answer.status).toBe('solved');
  const { slots, parts } = compiled(sketch);
  const x = Float64Array.from(slots.guess);
  for (const [name, slot] of slots.points) x.set([placed(answer, name).x, placed(answer, name).y], slot);
  for (const [name, slot] of slots.scalars) x[slot] = valued(answer, name);
  return parts.map((part) => {
    const model = new Model(part, slots.guess);
    model.evaluate(x);
    const { n, equal, atLeast, gradient } = model;
    const arm = (k: number): number => part.arms[k] ?? 1;
    const active = new RowBasis(n);
    for (let row = 0; row < equal.count; row++)
      active.add(
        equal.rows.map((slope, i) => slope / arm(i % n)),
        row * n,
      );
    for (let row = 0; row < atLeast.count; row++)
      if (Math.abs(atLeast.values[row] ?? 1) < 1e-7)
        active.add(
          atLeast.rows.map((slope, i) => slope / arm(i % n)),
          row * n,
        );
    active.project(gradient.map((slope, k) => slope / arm(k)));
    return Math.hypot(...active.rest);
  });
}

describe('wishes', () => {
  it('are at their least on a garment-sized sketch: no open direction has a slope (KKT conditions)', () => {
    for (const open of openGradients(garmentSketch())) expect(open).toBeLessThan(1e-8);
  });

  it('give the straight line when nothing bends it', () => {
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 120, y: 50 });
    draw.curve('edge', 'a', 'b', { start: { angle: -0.4 }, end: { angle: 1.1 } });
    draw.wish({ kind: 'low bending', name: 'straight', curve: 'edge', weight: 1 });
    const answer = solve(draw.sketch());
    // The pull towards the first guess, half a radian off, keeps back 0.00004 of it.
    const along = Math.atan2(50, 120);
    expect(valued(answer, 'edge start angle')).toBeCloseTo(along, 4);
    expect(valued(answer, 'edge end angle')).toBeCloseTo(along, 4);
  });

  it('change their bend least on a parabola, whose handles reach two thirds of the way to where its ends point', () => {
    // A cubic's third derivative vanishes just when it is a parabola raised in degree (Farin 2002, section 5.1).
    const draw = new SketchBuilder();
    draw.fixed('a', { x: 0, y: 0 });
    draw.fixed('b', { x: 100, y: 100 });
    draw.fixedAngle('level', 0);
    draw.fixedAngle('upright', Math.PI / 2);
    draw.curve('edge', 'a', 'b', { start: { angle: 'level' }, end: { angle: 'upright' } });
    draw.wish({ kind: 'fair', name: 'fair', curve: 'edge', weight: 1 });
    const answer = solve(draw.sketch());
    expect(valued(answer, 'edge start length')).toBeCloseTo(200 / 3, 3);
    expect(valued(answer, 'edge end length')).toBeCloseTo(200 / 3, 3);
  });

  it('come out twice as large on a sketch twice as large', () => {
    const build = (size: number): number => {
      const draw = new SketchBuilder();
      draw.fixed('a', { x: 0, y: 0 });
      draw.fixed('b', { x: 100 * size, y: 30 * size });
      const curve = draw.curve('edge', 'a', 'b', { start: { angle: -0.7 }, end: { angle: 0.9 } });
      draw.relation({ kind: 'length', name: 'long', terms: [lengthOf([curve])], mm: 118 * size });
      draw.wish(
        { kind: 'fair', name: 'fair', curve, weight: 1 },
        { kind: 'low bending', name: 'bends little', curve, weight: 1 },
      );
      return valued(solve(draw.sketch()), 'edge start length') / size;
    };
    expect(build(2)).toBeCloseTo(build(1), 3);
  });

  it('leave what no one speaks of where it was guessed', () => {
    const draw = new SketchBuilder();
    draw.point('p', { x: 12.5, y: -3 });
    draw.length('spare', 7);
    draw.relation({ kind: 'sum', name: 'x', terms: [xOf('p')], value: 20 });
    const answer = solve(draw.sketch());
    expect(placed(answer, 'p')).toEqual({ x: 20, y: -3 });
    expect(valued(answer, 'spare')).toBe(7);
  });
});

describe('the answer', () => {
  it('moves little when the sketch changes little', () => {
    const base = solve(garmentSketch());
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e-3, noNaN: true }), (grow) => {
        const grown = solve(garmentSketch(0, grow));
        // The sketch is 700 mm across; its softest points move some ten times as far as its size changes.
        for (const name of Object.keys(base.points))
          expect(distance(placed(base, name), placed(grown, name))).toBeLessThan(10_000 * grow + 1e-3);
      }),
      { numRuns: 8 },
    );
  });

  it('hardly depends on how far off the first guess was, once the wishes say what they want', () => {
    const base = solve(garmentSketch());
    // Guesses up to 12 mm off; the bounds of the handles, shares of the first chords, differ as well.
    for (const off of [0.05, 0.1, -0.1]) {
      const other = solve(garmentSketch(off));
      for (const name of Object.keys(base.points))
        expect(distance(placed(base, name), placed(other, name))).toBeLessThan(4);
    }
  });
});

describe('mistakes in a sketch', () => {
  const small = (): SketchBuilder => {
    const draw = new SketchBuilder();
    draw.point('p', { x: 0, y: 0 });
    draw.point('q', { x: 10, y: 0 });
    draw.line('pq', 'p', 'q');
    return draw;
  };

  it('are thrown with the name of the relation', () => {
    const unknown = small();
    unknown.relation({ kind: 'distance', name: 'shoulder', a: 'p', b: 'tip', mm: 12 });
    expect(() => solve(unknown.sketch())).toThrow('“shoulder” names the point “tip”');
    const infinite = small();
    infinite.relation({ kind: 'distance', name: 'shoulder', a: 'p', b: 'q', mm: NaN });
    expect(() => solve(infinite.sketch())).toThrow('“shoulder” needs a finite number');
    const straight = small();
    straight.wish({ kind: 'fair', name: 'fair shoulder', curve: 'pq', weight: 1 });
    expect(() => solve(straight.sketch())).toThrow('“fair shoulder” needs a cubic');
    const twice = small();
    const same = { kind: 'coincident', name: 'same', a: 'p', b: 'q' } as const;
    expect(() => twice.relation(same, { ...same, a: 'q', b: 'p' })).toThrow(
      'already has a relation called “same”',
    );
    const { points, scalars, curves, wishes } = small().sketch();
    expect(() => solve({ points, scalars, curves, wishes, relations: [same, same] })).toThrow(
      'two relations called “same”',
    );
  });

  it('are thrown for values that are not finite, bounds that cross, and names used twice', () => {
    const draw = small();
    draw.length('width', NaN);
    expect(() => solve(draw.sketch())).toThrow('“width” has no finite value');
    for (const at of [
      { x: NaN, y: 3 },
      { x: 3, y: Infinity },
    ]) {
      const nowhere = small();
      nowhere.point('bust point', at);
      expect(() => solve(nowhere.sketch())).toThrow('“bust point” has no finite place');
    }
    const crossed = small();
    crossed.length('width', 5, { min: 6, max: 4 });
    expect(() => solve(crossed.sketch())).toThrow('leave it no room');
    expect(() => small().point('p', { x: 1, y: 1 })).toThrow('already has a point called “p”');
  });
});
