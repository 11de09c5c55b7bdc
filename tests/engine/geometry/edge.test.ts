import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Edge } from '../../../engine/geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  endDirection,
  joinedEdges,
  lengthUpTo,
  placeAlong,
  pointAlong,
  reversedEdge,
  splitEdgeAt,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { uniform } from '../../uniform.ts';
import { cubic, line } from './generators.ts';

const bent: Edge = {
  name: 'bent',
  curves: [line(0, 0, 100, 0), cubic(100, 0, 150, 0, 200, 50, 200, 100), line(200, 100, 200, 150)],
};
const whole = edgeLength(bent);
const along = uniform(0, whole);

describe('an edge', () => {
  it('starts and ends with the directions of its outer curves', () => {
    expect(edgeStart(bent)).toEqual({ x: 0, y: 0 });
    expect(edgeEnd(bent)).toEqual({ x: 200, y: 150 });
    expect(startDirection(bent)).toEqual({ x: 1, y: 0 });
    expect(endDirection(bent)).toEqual({ x: 0, y: 1 });
  });

  it('finds the point a length along it, and the length up to it again', () => {
    fc.assert(
      fc.property(along, (s) => {
        expect(Math.abs(lengthUpTo(bent, placeAlong(bent, s)) - s)).toBeLessThan(3e-6);
      }),
    );
    expect(pointAlong(bent, 50)).toEqual({ point: { x: 50, y: 0 }, direction: { x: 1, y: 0 } });
    expect(pointAlong(bent, whole + 1).point).toEqual({ x: 200, y: 150 });
    expect(pointAlong(bent, -1).point).toEqual({ x: 0, y: 0 });
  });

  it('has the length of its parts when split anywhere', () => {
    fc.assert(
      fc.property(along, (s) => {
        fc.pre(s > 1e-3 && s < whole - 1e-3);
        const [before, after] = splitEdgeAt(bent, s, ['a', 'b']);
        expect([before.name, after.name]).toEqual(['a', 'b']);
        expect(Math.abs(edgeLength(before) - s)).toBeLessThan(1e-4);
        expect(Math.abs(edgeLength(before) + edgeLength(after) - whole)).toBeLessThan(1e-5);
        expect(distance(edgeEnd(before), edgeStart(after))).toBe(0);
        for (const { curves } of [before, after])
          for (const curve of curves) expect(edgeLength({ name: '', curves: [curve] })).toBeGreaterThan(1e-5);
      }),
    );
  });

  it('leaves no sliver when split at a joint', () => {
    const [before, after] = splitEdgeAt(bent, 100 + 1e-7, ['a', 'b']);
    expect([before.curves.length, after.curves.length]).toEqual([1, 2]);
  });

  it('refuses to be split outside itself', () => {
    for (const s of [-1, 0, whole, whole + 1, Number.NaN])
      expect(() => splitEdgeAt(bent, s, ['a', 'b'])).toThrow(RangeError);
  });

  it('comes back when reversed twice, and keeps what else it carries', () => {
    const carrying = { ...bent, allowance: 12.7 };
    expect(reversedEdge(reversedEdge(carrying))).toEqual(carrying);
    expect(edgeStart(reversedEdge(bent))).toEqual(edgeEnd(bent));
  });

  it('is the same edge when its parts are joined', () => {
    const joined = joinedEdges('bent', splitEdgeAt(bent, 150, ['a', 'b']));
    expect(joined.curves.length).toBe(4);
    expect(edgeLength(joined)).toBeCloseTo(whole, 5);
  });

  it('cannot be without curves', () => {
    expect(() => edgeOf('empty', [])).toThrow(RangeError);
    expect(() => edgeStart({ name: 'empty', curves: [] })).toThrow(RangeError);
  });
});
