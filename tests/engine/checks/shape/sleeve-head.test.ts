import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { cubic, notch } from '../../garments.ts';
import { against, along, arcFrom, figure, laidElsewhere, under } from './measuring.ts';

describe('the height of a notch', () => {
  /** An armhole that rises from the underarm in an arc of 100 mm radius over a quarter turn, away from the cloth. */
  const armhole = under('front', arcFrom(point(0, 0), 100, -Math.PI / 2), [
    notch('armhole notch', 'line', 100 * (Math.PI / 3)),
  ]);
  const height = (edges: 'along' | 'against'): ShapeMeasure => ({
    kind: 'notch height',
    of: { edges: [edges === 'along' ? along('front', 'line') : against('front', 'line')] },
    notch: 'armhole notch',
  });

  it('is its share of the height of the armhole: half, 60 degrees up a quarter circle (closed form)', () => {
    expect(figure(height('along'), armhole)).toBeCloseTo(0.5, 6);
  });

  it('does not change when the piece is turned or drawn from its other side', () => {
    const mirrored = mirrorImage(armhole);
    fc.assert(
      fc.property(uniform(-3, 3), (angle) => {
        expect(figure(height('along'), laidElsewhere(armhole, angle))).toBeCloseTo(0.5, 6);
        expect(figure(height('against'), laidElsewhere(mirrored, angle))).toBeCloseTo(0.5, 6);
      }),
    );
  });
});

describe('the top of a cap', () => {
  /** A cap 300 mm wide and as high, highest in its middle; its grain runs down 12 mm in front of that. */
  const cap = (shoulder: number) => ({
    ...under(
      'sleeve',
      [cubic(point(0, 300), point(0, -100), point(300, -100), point(300, 300))],
      [notch('shoulder', 'line', shoulder)],
    ),
    grain: { from: point(162, 20), to: point(162, 400) },
  });
  const from = (say: 'top' | 'grain'): ShapeMeasure => ({
    kind: 'cap top',
    of: { edges: [along('sleeve', 'line')] },
    notch: 'shoulder',
    say,
  });
  const half = figure(
    { kind: 'length', parts: [{ kind: 'edge', piece: 'sleeve', edge: 'line', times: 0.5 }] },
    cap(1),
  ) as number;

  it('lies at the notch where that stands in the middle of a cap that is alike on both sides', () => {
    expect(figure(from('top'), cap(half))).toBeCloseTo(0, 5);
    expect(figure(from('grain'), cap(half))).toBeCloseTo(12, 5);
  });

  it('lies in front of a notch that stands behind it, across the grain, however the sleeve is turned', () => {
    const behind = figure(from('top'), cap(half - 30)) ?? 0;
    expect(behind).toBeGreaterThan(29);
    expect(behind).toBeLessThan(30);
    for (const angle of [0.4, 2, -2.5])
      expect(figure(from('top'), laidElsewhere(cap(half - 30), angle))).toBeCloseTo(behind, 6);
    expect(figure(from('top'), cap(half + 30))).toBeCloseTo(-behind, 5);
  });

  it('lies in front for a mirrored sleeve too, whose cap is walked against its outline', () => {
    const mirrored: ShapeMeasure = {
      kind: 'cap top',
      of: { edges: [against('sleeve', 'line')] },
      notch: 'shoulder',
      say: 'top',
    };
    expect(figure(mirrored, mirrorImage(cap(half - 30)))).toBeCloseTo(
      figure(from('top'), cap(half - 30)) ?? 0,
      6,
    );
  });
});
