import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleOverBust } from '../../../../engine/body/bust.ts';
import { arcLength } from '../../../../engine/geometry/arc-length.ts';
import { crossings, levelAt } from '../../../../engine/geometry/intersect.ts';
import { point, turnedAbout } from '../../../../engine/geometry/point.ts';
import { reversed } from '../../../../engine/geometry/split.ts';
import { transformedCurve, turnedBy } from '../../../../engine/geometry/transform.ts';
import { mirrorImage } from '../../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../../engine/pattern/piece.ts';
import type { ShapeMeasure } from '../../../../engine/pattern/shape.ts';
import { uniform } from '../../../uniform.ts';
import { cubic, edge, line, piece } from '../../garments.ts';
import { against, along, arcEnd, arcFrom, figure, laidElsewhere, under } from './measuring.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

describe('the angle sewn in by a seam', () => {
  const sewnIn: ShapeMeasure = {
    kind: 'sewn-in angle',
    a: { edges: [along('side', 'line')] },
    b: { edges: [along('centre', 'line')] },
  };

  it('is what both its edges turn to the cloth: a dart of 20 degrees cut into the seam, however it is shared', () => {
    fc.assert(
      fc.property(uniform(0, 20), (share) => {
        const bent = (name: string, turn: number): Piece =>
          under(name, [
            line(point(0, 0), point(100, 0)),
            line(point(100, 0), turnedAbout(point(200, 0), point(100, 0), radians(turn))),
          ]);
        expect(figure(sewnIn, bent('side', share), bent('centre', 20 - share))).toBeCloseTo(20, 6);
      }),
    );
  });

  it('is the sum of the angles of two arcs, and leaves out the hollow that follows', () => {
    const bulge = arcFrom(point(0, 0), 120, radians(40));
    const end = arcEnd(point(0, 0), 120, radians(40));
    const hollow = arcFrom(end, 200, radians(-15)).map((curve) =>
      transformedCurve(curve, turnedBy(end, radians(40))),
    );
    const side = under('side', [...bulge, ...hollow]);
    const straight = under('centre', [line(point(0, 0), point(200, 0))]);
    expect(Math.abs((figure(sewnIn, side, straight) ?? 0) - 40)).toBeLessThan(0.5);
  });

  it('is nothing along a straight seam', () => {
    const straight = (name: string) => under(name, [line(point(0, 0), point(200, 0))]);
    expect(figure(sewnIn, straight('side'), straight('centre'))).toBeCloseTo(0, 9);
  });
});

describe('the angle that the measurements ask for', () => {
  it('is the bust dart where bust and under-bust are alike', () => {
    expect(angleOverBust(0.3, 0, 80)).toBeCloseTo(0.3, 12);
  });

  it('opens the lower cone over a quarter turn by the sine of its slope: 45 degrees give 90 sin 45 (closed form)', () => {
    const depth = 80;
    const growth = depth * (Math.PI / 2);
    expect(degrees(angleOverBust(0, 2 * growth, depth))).toBeCloseTo(90 * Math.SQRT1_2, 9);
  });

  it('grows with every cup and every dart, and never over a quarter turn more than the dart', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), (cup) => {
        expect(angleOverBust(0.2, cup + 1, 80)).toBeGreaterThan(angleOverBust(0.2, cup, 80));
        expect(angleOverBust(0.2, cup, 80)).toBeLessThan(0.2 + Math.PI / 2);
      }),
    );
  });
});

describe('the width across sewn panels', () => {
  /**
   * Cloth cut in two along an arched seam: sewn, the panels lie as they lay before, so that the width across is that of
   * the whole cloth. The armhole rises from (170, 0) to (150, -90).
   */
  const [seamFoot, seamTop] = [point(70, 0), point(80, -90)];
  const seam = cubic(seamFoot, point(90, -30), point(95, -60), seamTop);
  const armhole = cubic(point(170, 0), point(140, 0), point(150, -40), point(150, -90));
  const centre = piece('centre', [
    edge('middle', [line(point(0, 60), point(0, -90))], { turn: 'fold', allowance: 0 }),
    edge('neck', [line(point(0, -90), seamTop)]),
    edge('princess', [reversed(seam)]),
    edge('foot', [line(seamFoot, point(70, 60)), line(point(70, 60), point(0, 60))]),
  ]);
  const side = piece('side', [
    edge('princess', [seam]),
    edge('shoulder', [line(seamTop, point(150, -90))]),
    edge('armhole', [reversed(armhole)]),
    edge('side', [line(point(170, 0), point(170, 60)), line(point(170, 60), seamFoot)]),
  ]);
  const across = (walked: 'as drawn' | 'mirrored', share = 0.5): ShapeMeasure => ({
    kind: 'across',
    armhole: { edges: [walked === 'as drawn' ? against('side', 'armhole') : along('side', 'armhole')] },
    share,
    side: { edges: [walked === 'as drawn' ? along('side', 'princess') : against('side', 'princess')] },
    centre: { edges: [against('centre', 'princess')] },
    middle: along('centre', 'middle'),
    plus: -100,
  });
  const [halfWay] = crossings(armhole, levelAt(-45));
  const beyond = (halfWay?.point.x ?? 0) - 100;

  it('is that of the cloth that they were cut from, wherever the side panel lies or is mirrored', () => {
    expect(figure(across('as drawn'), centre, side)).toBeCloseTo(beyond, 2);
    fc.assert(
      fc.property(uniform(-3, 3), (angle) => {
        const mirrored = laidElsewhere(mirrorImage(side), angle);
        expect(figure(across('as drawn'), centre, laidElsewhere(side, angle))).toBeCloseTo(beyond, 2);
        expect(figure(across('mirrored'), centre, mirrored)).toBeCloseTo(beyond, 2);
      }),
    );
  });

  // The side panel's seam is bent and the centre's straight, so it matters where the two are laid together.
  it.each([
    [
      'below the seam at its foot',
      0.05,
      cubic(point(70, -20), point(70, -35), point(80, -50), point(88, -58)),
    ],
    [
      'above the seam at its top',
      0.95,
      cubic(point(73, -20), point(71.5, -30), point(70, -43), point(70, -58)),
    ],
  ])('is laid where it passes %s', (_, share, bent) => {
    const [low, high] = share < 0.5 ? [-20, -20 - arcLength(bent, 1e-9)] : [-58 + arcLength(bent, 1e-9), -58];
    const straight = line(point(70, low), point(70, high));
    const plain = piece('centre', [
      edge('middle', [line(point(0, 60), point(0, -90))], { turn: 'fold', allowance: 0 }),
      edge('neck', [line(point(0, -90), point(70, high))]),
      edge('princess', [reversed(straight)]),
      edge('foot', [line(point(70, low), point(70, 60)), line(point(70, 60), point(0, 60))]),
    ]);
    const leaning = piece('side', [
      edge('princess', [bent]),
      edge('shoulder', [line(bent.to, point(170, -90))]),
      edge('armhole', [line(point(170, -90), point(170, 0))]),
      edge('side', [line(point(170, 0), point(170, 60)), line(point(170, 60), bent.from)]),
    ]);
    // There its seam stands upright as the centre's does: nothing is turned, and the armhole is 170 from the middle.
    expect(figure(across('as drawn', share), plain, leaning)).toBeCloseTo(70, 6);
  });

  it('is taken on the centre panel alone where the armhole runs on over it: 60 degrees up a quarter circle (closed form)', () => {
    const panel = piece('centre', [
      edge('armhole', arcFrom(point(0, 0), 100, -Math.PI / 2)),
      edge('neck', [line(point(100, -100), point(250, -100))]),
      edge('middle', [line(point(250, -100), point(250, 200))], { turn: 'fold', allowance: 0 }),
      edge('foot', [line(point(250, 200), point(0, 200)), line(point(0, 200), point(0, 0))]),
    ]);
    const over: ShapeMeasure = {
      kind: 'across',
      armhole: { edges: [along('centre', 'armhole')] },
      share: 0.5,
      side: { edges: [along('side', 'princess')] },
      centre: { edges: [against('centre', 'foot')] },
      middle: along('centre', 'middle'),
    };
    expect(figure(over, laidElsewhere(panel, 0.6), side)).toBeCloseTo(250 - 100 * Math.sin(radians(60)), 5);
  });
});
