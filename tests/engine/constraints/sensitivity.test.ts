import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Relation } from '../../../engine/constraints/relations.ts';
import { follow } from '../../../engine/constraints/sensitivity.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { lengthOf, SketchBuilder, scalarOf, xOf, yOf } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { near, sum } from '../../../engine/constraints/statements.ts';
import { distance, type Point, vectorBetween } from '../../../engine/geometry/point.ts';
import { placed, valued } from './answers.ts';
import { knownSketch } from './random-sketch.ts';

const STEP = 1e-3;

const apart = (name: string, a: string, b: string, mm: number): Relation => ({
  kind: 'distance',
  name,
  a,
  b,
  mm,
});

/** Derivative of a point by what a sketch is drawn from, following one solution to both sides. */
function slope(sketch: (value: number) => Sketch, at: number, point: string): Point {
  const solution = solve(sketch(at));
  const [less, more] = [at - STEP, at + STEP].map((value) => placed(follow(sketch(value), solution), point));
  if (!less || !more) throw new Error('unreachable');
  const moved = vectorBetween(less, more);
  return { x: moved.x / (2 * STEP), y: moved.y / (2 * STEP) };
}

const triangle = (a: number, b: number, c: number): Sketch => {
  const draw = new SketchBuilder();
  draw.fixed('A', { x: 0, y: 0 });
  draw.fixed('B', { x: c, y: 0 });
  draw.point('C', { x: 0.4 * c, y: 0.9 * b });
  draw.relation(apart('side a', 'B', 'C', a), apart('side b', 'A', 'C', b));
  return draw.sketch();
};

describe('the apex of a triangle', () => {
  const [a, b, c] = [130, 140, 150];
  const x = (b * b + c * c - a * a) / (2 * c);
  const y = Math.sqrt(b * b - x * x);

  it('moves with a side as the law of cosines says: dx/db = b / c', () => {
    const moved = slope((side) => triangle(a, side, c), b, 'C');
    expect(moved.x).toBeCloseTo(b / c, 7);
    expect(moved.y).toBeCloseTo((b - (x * b) / c) / y, 7);
  });

  it('moves with a fixed corner: dx/dc = 1 - x / c', () => {
    const moved = slope((base) => triangle(a, b, base), c, 'C');
    expect(moved.x).toBeCloseTo(1 - x / c, 7);
    expect(moved.y).toBeCloseTo((-x * (1 - x / c)) / y, 7);
  });

  it('is missed by the square of the change alone', () => {
    const solution = solve(triangle(a, b, c));
    const [whole, half] = [2, 1].map((by) => {
      const changed = triangle(a, b + by, c);
      return distance(placed(follow(changed, solution), 'C'), placed(solve(changed), 'C'));
    });
    expect((whole ?? 0) / (half ?? 1)).toBeCloseTo(4, 1);
  });
});

describe('the point of a circle nearest to another', () => {
  const nearest = (radius: number, wished: Point): Sketch => {
    const draw = new SketchBuilder();
    draw.fixed('centre', { x: 0, y: 0 });
    draw.point('on', { x: radius, y: 10 });
    draw.relation(apart('on the circle', 'centre', 'on', radius));
    draw.wish(near('on across', [xOf('on')], wished.x, 1), near('on down', [yOf('on')], wished.y, 1));
    return draw.sketch();
  };

  it('turns with it by radius over distance, from outside and from inside', () => {
    // The radial projection r p / |p| has the derivative r / |p| across p, and none along it. The curvature of the
    // relation decides it: without that it would turn as far as the point moves.
    for (const far of [40, 100, 300]) {
      const across = slope((y) => nearest(100, { x: far, y }), 0, 'on');
      expect(across.x).toBeCloseTo(0, 6);
      expect(across.y).toBeCloseTo(100 / far, 4);
      const along = slope((x) => nearest(100, { x, y: 0 }), far, 'on');
      expect(Math.hypot(along.x, along.y)).toBeCloseTo(0, 6);
    }
  });

  it('moves with the radius', () => {
    const moved = slope((radius) => nearest(radius, { x: 90, y: 120 }), 100, 'on');
    expect(moved.x).toBeCloseTo(0.6, 6);
    expect(moved.y).toBeCloseTo(0.8, 6);
  });
});

describe('the end of a short axis of an ellipse, as seen from far beyond its middle', () => {
  /** The point on the upper half of an ellipse of these half-axes that is nearest to a place, drawn by its two foci. */
  const nearest = (long: number, short: number, wished: Point): Sketch => {
    const focus = Math.sqrt(long * long - short * short);
    const draw = new SketchBuilder();
    draw.fixed('left', { x: -focus, y: 0 });
    draw.fixed('right', { x: focus, y: 0 });
    draw.point('on', { x: 0, y: short });
    draw.line('to', 'left', 'on');
    draw.line('from', 'on', 'right');
    draw.relation({ kind: 'length', name: 'string', terms: [lengthOf(['to', 'from'])], mm: 2 * long });
    draw.wish(near('on across', [xOf('on')], wished.x, 1), near('on down', [yOf('on')], wished.y, 1));
    return draw.sketch();
  };

  // With L = |p - q|^2 / 2 - f (|p - left| + |p - right|), f = (b - y) a / 2 b, the second derivative across is
  // 1 - (b - y) b / a^2, and down it is 1 - (b - y) c^2 / b a^2: below nothing where q lies far down.
  it.each([10, -10, -31, -60])('moves across by one over the curvature that is left, from %d mm', (down) => {
    const [a, b] = [100, 31];
    const moved = slope((x) => nearest(a, b, { x, y: down }), 0, 'on');
    expect(moved.x).toBeCloseTo(1 / (1 - ((b - down) * b) / (a * a)), 4);
    expect(moved.y).toBeCloseTo(0, 6);
    // Followed in one step, not solved for anew.
    const solution = solve(nearest(a, b, { x: 0, y: down }));
    expect(follow(nearest(a, b, { x: STEP, y: down }), solution).iterations).toBe(1);
    expect(solve(nearest(a, b, { x: STEP, y: down })).iterations).toBeGreaterThan(1);
  });
});

describe('a scalar', () => {
  const wished = (value: number, max: number): Sketch => {
    const draw = new SketchBuilder();
    draw.length('s', 5, { max });
    draw.wish(near('s is long', [scalarOf('s')], value, 1));
    return draw.sketch();
  };
  const followed = (from: Sketch, to: Sketch): number => valued(follow(to, solve(from)), 's');

  it('stays on the bound that holds it, and goes with the bound', () => {
    expect(followed(wished(30, 20), wished(31, 20))).toBeCloseTo(20, 9);
    expect(followed(wished(30, 20), wished(30, 21))).toBeCloseTo(21, 9);
  });

  it('leaves a bound that it only touches for its own side', () => {
    expect(followed(wished(20, 20), wished(19.9, 20))).toBeCloseTo(19.9, 6);
    expect(followed(wished(20, 20), wished(20.1, 20))).toBeCloseTo(20, 9);
  });

  it('that nothing holds goes with its first guess', () => {
    const guessed = (at: number): Sketch => {
      const draw = new SketchBuilder();
      draw.length('s', at);
      return draw.sketch();
    };
    expect(followed(guessed(5), guessed(6))).toBeCloseTo(6, 9);
  });

  it('is solved for anew where no step leads on, and the contradiction is told', () => {
    const asked = (value: number): Sketch => {
      const draw = new SketchBuilder();
      draw.length('s', 5, { max: 10 });
      draw.relation(sum('s is so long', [scalarOf('s')], value));
      return draw.sketch();
    };
    expect(follow(asked(9), solve(asked(8))).status).toBe('solved');
    expect(follow(asked(20), solve(asked(8))).status).toBe('conflict');
  });
});

describe('random well-posed sketches', () => {
  it('are followed to where they would be solved, for relations changed by a thousandth of a millimetre', () => {
    fc.assert(
      fc.property(knownSketch(0.01, true), ({ sketch }) => {
        const changed: Sketch = {
          ...sketch,
          relations: sketch.relations.map((relation, i) =>
            'mm' in relation ? { ...relation, mm: relation.mm + (i % 2 ? STEP : -STEP) } : relation,
          ),
        };
        const solution = solve(sketch);
        const [expected, got] = [solve(changed), follow(changed, solution)];
        for (const name of sketch.points.keys()) {
          const moved = distance(placed(solution, name), placed(expected, name));
          expect(distance(placed(got, name), placed(expected, name))).toBeLessThan(1e-6 + 1e-2 * moved);
        }
      }),
      { numRuns: 100 },
    );
  });
});
