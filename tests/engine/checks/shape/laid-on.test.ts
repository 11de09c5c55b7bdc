import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { line } from '../../garments.ts';
import { against, along, arcEnd, arcFrom, figure, laidElsewhere, under } from './measuring.ts';

const origin = point(0, 0);
const cap = under('sleeve', arcFrom(origin, 60, 1.4));
const capOn = (b: 'line' | 'mirrored'): ShapeMeasure => ({
  kind: 'laid on',
  a: { edges: [along('sleeve', 'line')] },
  b: { edges: [b === 'line' ? along('front', 'line') : against('front', 'line')] },
});

describe('a cap laid on its armhole', () => {
  it('lies on it where both have one shape, however their pieces are turned or mirrored', () => {
    const armhole = under('front', arcFrom(origin, 60, 1.4));
    fc.assert(
      fc.property(uniform(-3, 3), (angle) => {
        expect(figure(capOn('line'), cap, laidElsewhere(armhole, angle))).toBeLessThan(0.02);
        expect(figure(capOn('mirrored'), cap, laidElsewhere(mirrorImage(armhole), angle))).toBeLessThan(0.02);
      }),
    );
  });

  it('parts from an equally long armhole of another radius by as much as two circles do (closed form)', () => {
    const length = 60 * 1.4;
    const flatter = under('front', arcFrom(origin, 90, length / 90));
    const [a, b] = [arcEnd(origin, 60, 1.4), arcEnd(origin, 90, length / 90)];
    expect(figure(capOn('line'), cap, flatter)).toBeCloseTo(Math.hypot(a.x - b.x, a.y - b.y), 1);
  });

  it('parts by what a straight line leaves beside an arc, 2 r (sin(a / 2)) apart in angle a / 2 (closed form)', () => {
    const straight = under('front', [line(origin, point(60 * 1.4, 0))]);
    const end = arcEnd(origin, 60, 1.4);
    expect(figure(capOn('line'), cap, straight)).toBeCloseTo(Math.hypot(end.x - 60 * 1.4, end.y), 1);
  });

  it('tells a hollow armhole from a round one', () => {
    const round = under('front', arcFrom(origin, 60, -1.4));
    expect(figure(capOn('line'), cap, round)).toBeCloseTo(2 * 60 * (1 - Math.cos(1.4)), 1);
  });
});
