import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import { curvatureAt } from '../../../engine/geometry/evaluate.ts';
import { inflectionCount, inflections, isStraight, joints } from '../../../engine/geometry/inflections.ts';
import { point } from '../../../engine/geometry/point.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import { anyCubic, cubic, line } from './generators.ts';

const hollow = cubic(0, 0, 30, 20, 60, 20, 90, 0);
const round = cubic(90, 0, 120, -20, 150, -20, 180, 0);

describe('inflections', () => {
  it('finds the middle of an even S and none in an arch', () => {
    expect(inflections(cubic(0, 0, 30, 40, 60, -40, 90, 0))).toEqual([expect.closeTo(0.5, 12)]);
    expect(inflections(hollow)).toEqual([]);
  });

  it('are where the curvature changes sign', () => {
    fc.assert(
      fc.property(anyCubic, (curve) => {
        for (const t of inflections(curve)) {
          const h = Math.min(1e-4, t / 2, (1 - t) / 2);
          expect(Math.sign(curvatureAt(curve, t - h))).toBe(-Math.sign(curvatureAt(curve, t + h)));
        }
        expect(inflections(reversed(curve))).toHaveLength(inflections(curve).length);
      }),
    );
  });

  it('do not count where the curve is straight to within a thousandth of a millimetre', () => {
    expect(inflections(cubic(0, 0, 30, 5e-4, 60, -5e-4, 90, 0))).toEqual([]);
    expect(inflections(cubic(0, 0, 30, 5e-2, 60, -5e-2, 90, 0))).toHaveLength(1);
    expect(isStraight(cubic(0, 0, 30, 5e-4, 60, 0, 90, 0))).toBe(true);
    expect(isStraight(hollow)).toBe(false);
  });

  it('do not count into a part that is straight, however much the rest of the curve bends', () => {
    const leaning = cubic(0, 0, 30, -0.05, 60, 0, 90, -40);
    expect(inflections(leaning)).toEqual([]);
    expect(inflections(leaning, 1e-7)).toEqual([expect.closeTo(0.0025, 4)]);
  });

  it('count over a whole edge, across joints and straight parts', () => {
    expect(inflectionCount({ name: 'e', curves: [hollow, round] })).toBe(1);
    expect(inflectionCount({ name: 'e', curves: [hollow, line(90, 0, 120, -15), round] })).toBe(1);
    expect(inflectionCount({ name: 'e', curves: [hollow, hollow] })).toBe(0);
  });
});

describe('joints', () => {
  it('tell the corner and the jump of curvature between neighbouring curves', () => {
    const arch = cubic(0, 0, 10, 0, 20, 10, 20, 20);
    const [joint] = joints({ name: 'e', curves: [line(-50, 0, 0, 0), arch] });
    expect(joint?.angle).toBe(0);
    expect(joint?.curvatureJump).toBeCloseTo(curvatureAt(arch, 0), 12);
    expect(joints({ name: 'e', curves: [line(0, 0, 10, 0), line(10, 0, 10, 10)] })[0]?.angle).toBeCloseTo(
      Math.PI / 2,
      12,
    );
    expect(joints({ name: 'e', curves: [arch] })).toEqual([]);
  });

  it('tell the jump between two arcs: the one’s curvature less the other’s, whichever way they turn', () => {
    const tight = arc(point(0, 50), { x: 0, y: -50 }, 1, 1e-9).curves;
    const end = tight.at(-1)?.to ?? point(0, 0);
    for (const side of [1, -1]) {
      // The next arc goes on from there with the same heading, about a centre 200 mm to its right or to its left.
      const spoke = { x: side * 200 * Math.sin(1), y: -side * 200 * Math.cos(1) };
      const wide = arc(point(end.x - spoke.x, end.y - spoke.y), spoke, 0.5 * side, 1e-9).curves;
      const found = joints({ name: 'e', curves: [...tight, ...wide] })[tight.length - 1];
      expect(found?.angle).toBeCloseTo(0, 6);
      expect(found?.curvatureJump).toBeCloseTo(side / 200 - 1 / 50, 5);
    }
  });
});
