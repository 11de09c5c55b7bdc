import { describe, expect, it } from 'vitest';
import { type EdgeAllowance, trimmedAcross, trimmedAt } from '../../../engine/finishing/edge-allowance.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { line } from '../geometry/generators.ts';

const down = { x: 0, y: 1 };
const chain = [line(0, 10, 20, 10), line(20, 10, 40, 10), line(40, 10, 40, 30)];

describe('a parallel cut off at a ray', () => {
  it('keeps what comes after the ray, and says how far along that it is', () => {
    expect(trimmedAt(chain, point(5, 3), down)).toEqual({
      rest: [line(5, 10, 20, 10), ...chain.slice(1)],
      along: 7,
    });
    expect(trimmedAt(chain, point(25, 3), down)).toEqual({
      rest: [line(25, 10, 40, 10), ...chain.slice(2)],
      along: 7,
    });
  });

  it('keeps whole curves where it is met at their ends', () => {
    expect(trimmedAt(chain, point(0, 3), down)?.rest).toEqual(chain);
    expect(trimmedAt(chain, point(20, 3), down)?.rest).toEqual(chain.slice(1));
  });

  it('is met where the ray begins, be it by rounding before that, and not behind it', () => {
    expect(trimmedAt(chain, point(5, 10), down)?.along).toBeCloseTo(0, 12);
    expect(trimmedAt(chain, point(5, 10 + 1e-9), down)?.along).toBeCloseTo(0, 8);
    expect(trimmedAt(chain, point(5, 11), down)).toBeUndefined();
  });

  it('is cut off at the first place that counts', () => {
    const bowl: readonly Curve[] = [line(0, 10, 20, 10), line(20, 10, 0, 20)];
    expect(trimmedAt(bowl, point(10, 0), down)?.along).toBe(10);
    expect(trimmedAt(bowl, point(10, 0), down, ({ y }) => y > 12)?.along).toBeCloseTo(15, 12);
    expect(trimmedAt(bowl, point(10, 0), down, (_, heading) => heading.x < 0)?.along).toBeCloseTo(15, 12);
    expect(trimmedAt(bowl, point(10, 0), down, () => false)).toBeUndefined();
  });
});

describe('a parallel cut off at the prolongation of a seam', () => {
  /** The edge across runs level from the corner at the origin to the left; its cloth lies below. */
  const across = (parallel: readonly Curve[]): EdgeAllowance => ({
    width: 10,
    rank: 2,
    curves: [line(0, 0, -50, 0)],
    parallel,
    deviation: 0,
  });
  const seam = { along: { x: 0, y: -1 }, outward: { x: 1, y: 0 } };

  it('is cut where it comes in over it', () => {
    expect(trimmedAcross(across([line(20, -10, -50, -10)]), point(0, 0), seam)).toEqual({
      rest: [line(0, -10, -50, -10)],
      along: 10,
    });
  });

  it('is not where it goes out over it, lies nearer than its allowance, or runs back', () => {
    expect(trimmedAcross(across([line(20, -9, -50, -9)]), point(0, 0), seam)).toBeUndefined();
    const back = across([line(-50, -10, 20, -10)]);
    expect(trimmedAcross(back, point(0, 0), seam)).toBeUndefined();
    expect(trimmedAcross({ ...back, curves: [line(-50, 0, 0, 0)] }, point(0, 0), seam)).toBeUndefined();
    const tail = across([line(-20, -10, 20, -10), line(20, -10, 20, -12), line(20, -12, -50, -12)]);
    expect(trimmedAcross(tail, point(0, 0), seam)?.along).toBe(12);
  });

  it('may lie nearer by as much as it strays from the true parallel', () => {
    const strayed = { ...across([line(20, -9.98, -50, -9.98)]), deviation: 0.02 };
    expect(trimmedAcross(strayed, point(0, 0), seam)?.along).toBeCloseTo(9.98, 12);
    expect(trimmedAcross({ ...strayed, deviation: 0.01 }, point(0, 0), seam)).toBeUndefined();
  });
});
