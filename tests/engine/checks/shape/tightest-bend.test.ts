import { describe, expect, it } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { cubic, line } from '../../garments.ts';
import { along, arcFrom, figure, under } from './measuring.ts';

const bend: ShapeMeasure = { kind: 'tightest bend', of: { edges: [along('front', 'line')] } };

describe('the tightest bend of a line', () => {
  it('is the radius of an arc, round or hollow', () => {
    expect(figure(bend, under('front', arcFrom(point(0, 0), 40, 1.2)))).toBeCloseTo(40, 3);
    expect(figure(bend, under('front', arcFrom(point(0, 0), 25, -1.2)))).toBeCloseTo(25, 3);
  });

  it('is 3/8 of the height in the middle of a cubic whose handles stand upright (curvature -8/3, closed form)', () => {
    const arch = cubic(point(0, 0), point(0, 100), point(100, 100), point(100, 0));
    expect(figure(bend, under('front', [arch]))).toBeCloseTo(37.5, 6);
  });

  it('is nothing at a corner, and without end in a straight line', () => {
    const corner = [line(point(0, 0), point(50, 0)), line(point(50, 0), point(90, 30))];
    expect(figure(bend, under('front', corner))).toBe(0);
    expect(figure(bend, under('front', [line(point(0, 0), point(50, 0))]))).toBe(Infinity);
  });

  it('is the tighter of two, on whichever piece it lies', () => {
    const over: ShapeMeasure = {
      kind: 'tightest bend',
      of: { edges: [along('front', 'line'), along('back', 'line')] },
    };
    const [wide, tight] = [arcFrom(point(0, 0), 90, 0.7), arcFrom(point(0, 0), 20, 0.7)];
    expect(figure(over, under('front', wide), under('back', tight))).toBeCloseTo(20, 3);
    expect(figure(over, under('front', tight), under('back', wide))).toBeCloseTo(20, 3);
  });
});
