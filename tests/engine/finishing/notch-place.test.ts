import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amidStrokes, footOf, whereItPoints } from '../../../engine/finishing/notch-place.ts';
import { pointAlong } from '../../../engine/geometry/edge.ts';
import { moved, point } from '../../../engine/geometry/point.ts';
import { outward, scaled } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { edge, line } from '../garments.ts';

const LENGTH = 120;
const straight = edge('armhole', [line(point(0, 0), point(LENGTH, 0))]);

/** Where the strokes of a double notch are drawn: 6 mm apart about its place, moved inward from the ends of the edge. */
const drawnFor = (at: number): readonly number[] => {
  const first = Math.max(0, Math.min(at - 3, LENGTH - 6));
  return [first, first + 6];
};

describe('a double notch read back', () => {
  it('stands in the middle of its strokes', () => {
    fc.assert(
      fc.property(fc.double({ min: 3.1, max: LENGTH - 3.1, noNaN: true }), (at) => {
        expect(amidStrokes(straight, drawnFor(at), 'double')).toBeCloseTo(at, 9);
      }),
    );
  });

  it.each([0, LENGTH])('stands at the end of its edge where it was moved inward from there: %i', (at) => {
    expect(amidStrokes(straight, drawnFor(at), 'double')).toBe(at);
    const rounded = drawnFor(at).map((place) => Math.min(LENGTH, place + 0.0001));
    expect(amidStrokes(straight, rounded, 'double')).toBe(at);
  });

  it('is found where it is from edge to edge, as near as its strokes can tell', () => {
    fc.assert(
      fc.property(uniform(0, LENGTH), (at) => {
        expect(Math.abs(amidStrokes(straight, drawnFor(at), 'double') - at)).toBeLessThanOrEqual(3 + 1e-9);
      }),
    );
  });
});

describe('any other notch read back', () => {
  it('stands where its stroke does, at an end too', () => {
    for (const at of [0, 0.5, 60, LENGTH]) expect(amidStrokes(straight, [at], 'single')).toBe(at);
    expect(amidStrokes(straight, [2, 4], 'level')).toBe(3);
  });
});

describe('a stroke read back', () => {
  /** A hollow of 20 mm radius, nearly half round, as an arc of a cubic. */
  const hollow = edge('waist', [
    {
      kind: 'cubic',
      from: point(-20, 0),
      handle1: point(-20, 26.4),
      handle2: point(20, 26.4),
      to: point(20, 0),
    },
  ]);

  it('stands at the foot it says, however near other places of a hollow are', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 58, noNaN: true }), (at) => {
        const { point: foot, direction } = pointAlong(hollow, at);
        const out = outward(direction);
        const [from, to] = [moved(foot, scaled(out, 25)), moved(foot, scaled(out, 29))];
        expect(footOf(hollow, [line(from, to)], at).along).toBeCloseTo(at, 6);
      }),
    );
  });

  it('tells how far it was moved', () => {
    for (const by of [-0.4, -0.1, 0.1, 0.4])
      for (const at of [0, 30, LENGTH])
        expect(footOf(straight, [line(point(at + by, -9), point(at + by, -13))], at).along).toBeCloseTo(
          Math.min(LENGTH, Math.max(0, at + by)),
          9,
        );
  });

  it('stands where the tip of its wedge points, or where the edge is nearest', () => {
    const wedge = [line(point(57.5, -12), point(60, -16)), line(point(60, -16), point(62.5, -12))];
    expect(footOf(straight, wedge, 10).along).toBeCloseTo(60, 9);
    expect(footOf(straight, [line(point(-5, -9), point(-5, -13))], 0).along).toBe(0);
  });
});

describe('a notch at the mouth of a dart read back', () => {
  const stroke = (x1: number, y1: number, x2: number, y2: number) => [line(point(x1, y1), point(x2, y2))];

  it('stands where its line, prolonged, meets the edge', () => {
    expect(whereItPoints(straight, stroke(30, -10, 30, -6))).toMatchObject({ curve: 0, t: 30 / LENGTH });
    expect(whereItPoints(straight, stroke(34, -10, 33, -8)).t).toBeCloseTo(29 / LENGTH, 9);
    const wedge = [...stroke(28, -10, 30, -14), ...stroke(30, -14, 32, -10), ...stroke(32, -10, 28, -10)];
    expect(whereItPoints(straight, [...wedge.slice(0, 1), ...stroke(30, -14, 28, -6)]).t).toBeCloseTo(
      28 / LENGTH,
      9,
    );
  });

  it('stands at the nearer end where its line passes the edge by, or meets it farther off than that', () => {
    expect(whereItPoints(straight, stroke(LENGTH + 0.001, -10, LENGTH + 0.001, -6)).t).toBe(1);
    expect(whereItPoints(straight, stroke(-0.001, -10, -0.001, -6)).t).toBe(0);
    expect(whereItPoints(straight, stroke(LENGTH - 1, -10, LENGTH - 2, -10.1)).t).toBe(1);
    expect(whereItPoints(straight, stroke(1, -10, 12, -9)).t).toBe(0);
  });

  it('stands at the nearer of two places', () => {
    const bent = edge('mouth', [line(point(0, 0), point(50, 0)), line(point(50, 0), point(20, 40))]);
    expect(whereItPoints(bent, stroke(40, -10, 40, -6))).toMatchObject({ curve: 0, t: 0.8 });
    expect(whereItPoints(bent, stroke(40, 30, 40, 26))).toMatchObject({
      curve: 1,
      t: expect.closeTo(1 / 3, 9),
    });
  });
});
