import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { curveCrossings } from '../../../engine/geometry/curve-crossings.ts';
import { runOneWay } from '../../../engine/geometry/one-way.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import { movedBy, transformedCurve } from '../../../engine/geometry/transform.ts';
import { cubic, line, seamCubic } from './generators.ts';

const straight = line(0, 0, 10, 0);

describe('a curve and the one that follows it', () => {
  it('run on one way where no leg of either goes back', () => {
    expect(runOneWay(straight)).toBe(true);
    expect(runOneWay(straight, line(10, 0, 10, 10))).toBe(true);
    expect(runOneWay(straight, cubic(10, 0, 13, 5, 16, -5, 20, 0))).toBe(true);
    expect(runOneWay(line(0, 0, 30, 60), cubic(30, 60, 30, 100, 50, 100, 60, 120))).toBe(true);
    // Against (1, 2), a leg of (-10, 2) goes back though it goes down, and one of (4, -3) though it goes sideways.
    expect(runOneWay(line(0, 0, 30, 60), cubic(30, 60, 20, 62, 50, 100, 60, 120))).toBe(false);
    expect(runOneWay(line(0, 0, 30, 60), cubic(30, 60, 34, 57, 50, 100, 60, 120))).toBe(false);
    expect(runOneWay(straight, line(10, 0, 0, 0))).toBe(false);
  });

  it('run on one way where a leg stands square to it, or has no length', () => {
    for (const cubicOn of [
      cubic(10, 0, 10, 5, 15, 5, 20, 0),
      cubic(10, 0, 15, 0, 15, 5, 20, 0),
      cubic(10, 0, 15, 5, 20, 5, 20, 0),
      cubic(10, 0, 10, 0, 20, 0, 20, 0),
    ])
      expect(runOneWay(straight, cubicOn)).toBe(true);
  });

  it.each([
    ['first', cubic(10, 0, 8, 4, 16, 4, 20, 0)],
    ['middle', cubic(10, 0, 17, 4, 13, 4, 20, 0)],
    ['last', cubic(10, 0, 14, 4, 22, 4, 20, 0)],
  ])('do not where the %s leg of one of them goes back, be it the first or the second', (_, back) => {
    expect(runOneWay(straight, back)).toBe(false);
    expect(runOneWay(back, line(20, 0, 30, 0))).toBe(false);
    expect(runOneWay(back)).toBe(false);
  });

  it('meet nowhere but at their joint where they do', () => {
    const chained = fc
      .tuple(seamCubic, seamCubic)
      .map(([a, b]): readonly [Cubic, Cubic] => [a, transformedCurve(b, movedBy({ x: a.to.x, y: a.to.y }))]);
    fc.assert(
      fc.property(chained, ([a, b]) => {
        fc.pre(runOneWay(a, b));
        expect(runOneWay(reversed(b), reversed(a))).toBe(true);
        for (const { point } of curveCrossings(a, b)) expect(distance(point, a.to)).toBeLessThan(1e-5);
      }),
    );
  });
});
