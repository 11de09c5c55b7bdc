import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import { transformedCurve, turnedBy } from '../../../../engine/geometry/transform.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../../engine/pattern/piece.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { edge, line, piece } from '../../garments.ts';
import { against, along, arcFrom, figure, laidElsewhere } from './measuring.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A panel on a fold, 110 mm long at its princess seam, that dips by `dip` mm at the fold and leans by `lean` degrees. */
const centreFront = (dip: number, lean: number): Piece => {
  const out = 110 * Math.tan(radians(lean));
  return piece(
    'centre front',
    [
      edge('under-bust', [line(point(0, 0), point(80, 0))]),
      edge('princess', [line(point(80, 0), point(80 + out, 110))]),
      edge('waist', [line(point(80 + out, 110), point(0, 110 + dip))]),
      edge('fold', [line(point(0, 110 + dip), point(0, 0))], { turn: 'fold', allowance: 0 }),
    ],
    {
      lines: [{ name: 'level', kind: 'level', curves: [line(point(0, 40), point(80, 40))] }],
    },
  );
};

const waistAt = (seam: string) =>
  ({
    corner: { piece: 'centre front', edge: 'waist', seam },
    level: { kind: 'edge', name: 'under-bust' },
  }) as const;

describe('the dip of a waist', () => {
  const dip: ShapeMeasure = { kind: 'dip', at: waistAt('fold'), than: waistAt('princess') };

  it('is how much lower the fold ends than the princess seam, however the panel lies', () => {
    expect(figure(dip, centreFront(12.6, 0))).toBeCloseTo(12.6, 9);
    expect(figure(dip, laidElsewhere(centreFront(-3, 20), 2.2))).toBeCloseTo(-3, 9);
    expect(figure(dip, mirrorImage(centreFront(7, 4)))).toBeCloseTo(7, 9);
  });

  it('may be measured from a level line on one side', () => {
    const fromLine: ShapeMeasure = {
      ...dip,
      than: { ...waistAt('princess'), level: { kind: 'line', name: 'level' } },
    };
    expect(figure(fromLine, centreFront(10, 0))).toBeCloseTo(50, 9);
  });

  it('cannot be found at a corner of edges that do not meet', () => {
    expect(figure({ ...dip, at: waistAt('under-bust') }, centreFront(1, 0))).toBeUndefined();
  });
});

describe('the lean of a princess edge', () => {
  const lean: ShapeMeasure = {
    kind: 'lean',
    at: { piece: 'centre front', edge: 'princess', seam: 'waist' },
  };

  it('is its angle with the grain where it meets the waist, to either side', () => {
    fc.assert(
      fc.property(uniform(-60, 60), uniform(-3, 3), (degrees, turned) => {
        const panel = laidElsewhere(centreFront(0, degrees), turned);
        expect(figure(lean, panel)).toBeCloseTo(Math.abs(degrees), 7);
        expect(figure(lean, mirrorImage(panel))).toBeCloseTo(Math.abs(degrees), 7);
      }),
    );
  });
});

describe('the grain', () => {
  it('is as far from upright as it is from square to a level', () => {
    const upright: ShapeMeasure = { kind: 'grain', piece: 'centre front', line: 'level' };
    const panel = centreFront(0, 0);
    expect(figure(upright, panel)).toBeCloseTo(0, 7);
    const askew = {
      ...panel,
      grain: { from: point(30, 0), to: point(30 + 100 * Math.tan(radians(3)), 100) },
    };
    expect(figure(upright, askew)).toBeCloseTo(3, 7);
    expect(figure(upright, laidElsewhere(askew, 1))).toBeCloseTo(3, 7);
  });
});

describe('the fullest place of a princess edge', () => {
  /** A panel whose left edge, 200 mm long from end to end, bulges in an arc of 200 mm radius about its middle. */
  const bulging = (bust: number): Piece => {
    const [foot, top] = [point(0, 100), point(0, -100)];
    const upwards = arcFrom(foot, 200, radians(60)).map((curve) =>
      transformedCurve(curve, turnedBy(foot, radians(-120))),
    );
    return piece(
      'side front',
      [
        edge('princess', upwards),
        edge('top', [line(top, point(150, -100))]),
        edge('side', [line(point(150, -100), point(150, 100))]),
        edge('waist', [line(point(150, 100), foot)]),
      ],
      { lines: [{ name: 'bust', kind: 'level', curves: [line(point(-20, bust), point(150, bust))] }] },
    );
  };
  const fullest = (
    say: 'past level' | 'beyond chord',
    walked: 'along' | 'against' = 'along',
  ): ShapeMeasure => ({
    kind: 'fullest',
    of: { edges: [walked === 'along' ? along('side front', 'princess') : against('side front', 'princess')] },
    line: 'bust',
    say,
  });

  it('lies in the middle of an arc, as far past the bust level as that lies from the middle', () => {
    expect(figure(fullest('past level'), bulging(14))).toBeCloseTo(14, 4);
    expect(figure(fullest('past level'), bulging(-9))).toBeCloseTo(-9, 4);
    expect(figure(fullest('past level'), laidElsewhere(bulging(14), -2))).toBeCloseTo(14, 4);
  });

  it('stands beyond its chord by r (1 - cos(a / 2)) (closed form)', () => {
    expect(figure(fullest('beyond chord'), bulging(0))).toBeCloseTo(200 * (1 - Math.cos(radians(30))), 4);
  });

  it('is counted in the direction in which the edge runs: a mirrored panel is walked against its outline', () => {
    expect(figure(fullest('past level', 'against'), mirrorImage(bulging(14)))).toBeCloseTo(14, 4);
    expect(figure(fullest('past level', 'against'), bulging(14))).toBeCloseTo(-14, 4);
    for (const angle of [-2, 0.7, 1.6])
      expect(
        figure(fullest('past level', 'against'), laidElsewhere(mirrorImage(bulging(14)), angle)),
      ).toBeCloseTo(14, 4);
  });
});
