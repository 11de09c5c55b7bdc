import { describe, expect, it } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { untangled } from '../../../engine/geometry/untangle.ts';
import { cubic, line } from '../garments.ts';

const loop = (corners: readonly (readonly [number, number])[]): Curve[] =>
  corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] ?? [x, y];
    return line(point(x, y), point(nextX, nextY));
  });

const area = (curves: readonly Curve[]): number => signedArea([{ name: 'loop', curves }]);

const simple = (curves: readonly Curve[]): boolean => isSimple([{ name: 'loop', curves }]);

const closes = (curves: readonly Curve[]): boolean =>
  curves.every((curve, i) => distance(curve.to, curves[(i + 1) % curves.length]?.from ?? curve.to) < 1e-9);

describe('untangling a closed chain', () => {
  it('leaves a simple one as it is', () => {
    const square = loop([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
    expect(untangled(square)).toBe(square);
    expect(simple(square)).toBe(true);
  });

  it('cuts away the loop that runs the wrong way round', () => {
    // An inward corner at (5, 5) whose two sides cross at (5, 4) and run on.
    const tangled = loop([
      [0, 0],
      [4, 0],
      [6, 8],
      [4, 8],
      [6, 0],
      [10, 0],
      [10, 20],
      [0, 20],
    ]);
    expect(simple(tangled)).toBe(false);
    const free = untangled(tangled);
    expect(simple(free)).toBe(true);
    expect(closes(free)).toBe(true);
    expect(free.some((curve) => distance(curve.to, point(5, 4)) < 1e-9)).toBe(true);
    expect(area(free)).toBeCloseTo(200 - 4, 9);
  });

  it('cuts away a wrong loop that holds the chain’s first place', () => {
    const tangled = loop([
      [6, 8],
      [4, 8],
      [6, 0],
      [10, 0],
      [10, 20],
      [0, 20],
      [0, 0],
      [4, 0],
    ]);
    expect(area(untangled(tangled))).toBeCloseTo(200 - 4, 9);
  });

  it('cuts away several loops', () => {
    const tangled = loop([
      [0, 0],
      [4, 0],
      [6, 8],
      [4, 8],
      [6, 0],
      [14, 0],
      [16, 8],
      [14, 8],
      [16, 0],
      [20, 0],
      [20, 20],
      [0, 20],
    ]);
    const free = untangled(tangled);
    expect(simple(free)).toBe(true);
    expect(area(free)).toBeCloseTo(400 - 8, 9);
  });

  it('finds the crossing of two curves exactly', () => {
    // Two mirror images, so they cross on their axis x = 50.
    const left = cubic(point(0, 0), point(40, 0), point(60, 30), point(60, 60));
    const right = cubic(point(40, 60), point(40, 30), point(60, 0), point(100, 0));
    const tangled = [
      left,
      line(point(60, 60), point(40, 60)),
      right,
      line(point(100, 0), point(100, 200)),
      line(point(100, 200), point(0, 200)),
      line(point(0, 200), point(0, 0)),
    ];
    const free = untangled(tangled);
    expect(simple(free)).toBe(true);
    expect(closes(free)).toBe(true);
    expect(free.some((curve) => Math.abs(curve.to.x - 50) < 1e-9 && curve.to.y > 1)).toBe(true);
  });

  it('finds where one curve crosses itself', () => {
    const looped = [
      cubic(point(0, 0), point(150, 100), point(-50, 100), point(100, 0)),
      line(point(100, 0), point(100, 200)),
      line(point(100, 200), point(0, 200)),
      line(point(0, 200), point(0, 0)),
    ];
    const free = untangled(looped);
    expect(simple(looped)).toBe(false);
    expect(simple(free)).toBe(true);
    expect(closes(free)).toBe(true);
  });
});
