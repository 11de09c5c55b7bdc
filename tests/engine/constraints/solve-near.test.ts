import { describe, expect, it } from 'vitest';
import { foretold } from '../../../engine/constraints/foretold.ts';
import { limitsMet } from '../../../engine/constraints/limits-met.ts';
import { SketchBuilder } from '../../../engine/constraints/sketch-builder.ts';
import { solve, solveNear } from '../../../engine/constraints/solve.ts';
import { isLong } from '../../../engine/constraints/statements.ts';
import { point } from '../../../engine/geometry/point.ts';

/** An arch over 90 mm, so long. */
function arch(mm: number) {
  const sketch = new SketchBuilder();
  sketch.fixed('left', point(0, 0));
  sketch.fixed('right', point(90, 0));
  const handles = [0.01, 3] as const;
  sketch.curve('arch', 'left', 'right', { start: { angle: -0.5 }, end: { angle: 0.5 }, handles });
  sketch.wish({ kind: 'low bending', name: 'bends little', curve: 'arch', weight: 1 });
  sketch.relation(isLong('length of the arch', ['arch'], mm));
  return sketch.sketch();
}

describe('a solution looked for near another', () => {
  it('is the same, in fewer steps', () => {
    const alone = solve(arch(101));
    const near = solveNear(arch(101), solve(arch(100)));
    expect(near.status).toBe('solved');
    expect(near.iterations).toBeLessThan(alone.iterations);
    for (const [name, value] of Object.entries(alone.scalars))
      expect(near.scalars[name]).toBeCloseTo(value, 5);
  });

  it('is the same to the last bit the next time', () => {
    const before = solve(arch(100));
    expect(solveNear(arch(101), before)).toEqual(solveNear(arch(101), before));
  });

  it('is found though nothing is like it there', () => {
    const wrong = { points: {}, scalars: { 'arch start angle': 3, 'arch end angle': -3 } };
    const near = solveNear(arch(101), wrong);
    expect(near.status).toBe('solved');
    expect(near.residuals.every(({ error }) => Math.abs(error) < 1e-6)).toBe(true);
  });

  it('keeps what is fixed where its own sketch has it', () => {
    const near = solveNear(arch(101), { points: { left: point(5, 5) }, scalars: {} });
    expect(near.points.left).toEqual(point(0, 0));
  });
});

describe('where an answer is foretold', () => {
  const found = (x: number, length: number) => ({ points: { a: point(x, 2 * x) }, scalars: { length } });

  it('is where the last step leads once more, exactly so where steps are even', () => {
    const next = foretold([
      { found: found(12, 30), times: 2 },
      { found: found(10, 27), times: -1 },
    ]);
    expect(next).toEqual(found(14, 33));
  });

  it('leaves out what not all of them have', () => {
    const next = foretold([
      { found: found(12, 30), times: 2 },
      { found: { points: {}, scalars: { length: 29 } }, times: -1 },
    ]);
    expect(next).toEqual({ points: {}, scalars: { length: 31 } });
  });

  it('is off by the second difference: of a circle through whose quarter a point goes in even steps', () => {
    const at = (angle: number) => found(100 * Math.cos(angle), 0);
    const step = 0.02;
    const next = foretold([
      { found: at(1), times: 2 },
      { found: at(1 - step), times: -1 },
    ]);
    expect(Math.abs((next.points.a?.x ?? 0) - 100 * Math.cos(1 + step))).toBeLessThan(100 * step * step);
  });
});

describe('the limits on which a solution rests', () => {
  it('are the bounds that it would pass, and none where it stays within them', () => {
    const free = arch(101);
    expect(limitsMet(free, solve(free))).toEqual([]);
    const tight = {
      ...free,
      scalars: new Map([
        ...free.scalars,
        ['arch start angle', { at: -0.2, unit: 'rad' as const, free: true, min: -0.3, max: 0 }],
      ]),
    };
    expect(limitsMet(tight, solve(tight))).toEqual(['bounds of arch start angle']);
  });
});
