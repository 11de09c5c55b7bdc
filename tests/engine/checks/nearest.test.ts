import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawn, isNear, nearest } from '../../../engine/checks/nearest.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { uniform } from '../../uniform.ts';
import { line, seamCubic } from '../geometry/generators.ts';

const FLATNESS = 0.005;
const anyPlace = fc.tuple(uniform(-450, 450), uniform(-450, 450)).map(([x, y]) => point(x, y));

describe('the nearest place of drawn curves', () => {
  it('is the one that their true distance says, to the flatness of their chords', () => {
    fc.assert(
      fc.property(fc.array(seamCubic, { minLength: 1, maxLength: 3 }), anyPlace, (curves, p) => {
        const all = drawn(curves, FLATNESS);
        const found = nearest(all, p, Number.POSITIVE_INFINITY);
        const exact = nearestOnEdge({ curves }, p);
        expect(Math.abs((found?.distance ?? Number.NaN) - exact.distance)).toBeLessThanOrEqual(FLATNESS);
        expect(distance(found?.at ?? p, p)).toBeCloseTo(found?.distance ?? Number.NaN, 9);
        for (const by of [0.02, -0.02]) expect(isNear(all, p, exact.distance + by)).toBe(by > 0);
        expect(nearest(all, p, exact.distance - 0.02)).toBeUndefined();
        expect(nearest(all, p, exact.distance + 0.02)?.at).toEqual(found?.at);
      }),
    );
  });

  it('of a line is the foot of the point or the nearer end, with all of the line and its heading', () => {
    const all = drawn([line(10, 0, 10, 40)], FLATNESS);
    const at = (x: number, y: number) => nearest(all, point(x, y), 100);
    const whole = { chord: [point(10, 0), point(10, 40)], heading: { x: 0, y: 1 } };
    expect(at(13, 30)).toEqual({ distance: 3, at: point(10, 30), ...whole });
    expect(at(7, -4)).toEqual({ distance: 5, at: point(10, 0), ...whole });
    expect(at(13, 44)).toEqual({ distance: 5, at: point(10, 40), ...whole });
    expect(nearest(drawn([line(2, 2, 2, 2)], FLATNESS), point(5, 6), 100)?.distance).toBe(5);
  });

  it('of equally near ones is the first', () => {
    const all = drawn([line(0, 0, 10, 0), line(0, 10, 10, 10)], FLATNESS);
    expect(nearest(all, point(5, 5), 100)?.at).toEqual(point(5, 0));
  });
});
