import type { Body } from '../../engine/body/body.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import { edgeLength, edgeOf, pointAlong } from '../../engine/geometry/edge.ts';
import { type Point, turnedAbout } from '../../engine/geometry/point.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { solvedCurves } from '../piece-edges.ts';
import type { BodicePlan } from './bodice.ts';
import type { BodiceStyling } from './choices.ts';

const STRAP_NOT_SHOULDER =
  'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a plain bodice';
const THIS_BODY = 'this body differs from the regular adult that the band is for';

/** What a pattern cutter looks at in a bodice. */
export function bodiceFigures(
  plan: BodicePlan,
  solution: Solution,
  body: Body,
  styling: BodiceStyling,
): readonly ShapeClaim[] {
  const { levels, widths, front, back, frontLines, backLines } = plan;
  const { size } = body;
  const drafted = (piece: string) => ({ kind: 'drafted', piece }) as const;
  const mm = (
    piece: string,
    name: string,
    value: number,
    low: number,
    high: number,
    outside = THIS_BODY,
  ): ShapeClaim => ({
    ...drafted(piece),
    name,
    value,
    unit: 'mm',
    low,
    high,
    outside,
  });
  const inDegrees = (angle: number): number => (angle * 180) / Math.PI;

  const middle = (curve: string): Point => {
    const armhole = edgeOf(curve, solvedCurves(solution, [curve]));
    return pointAlong(armhole, edgeLength(armhole) / 2).point;
  };
  const acrossFront = turnedAbout(middle(frontLines.armhole), front.pivot, -front.turned).x;

  return [
    mm('side back', 'armhole level below the scye depth', levels.underarm - size.scyeDepth, 10, 25),
    mm(
      'side back',
      'half across back at mid armhole, beyond the body',
      middle(backLines.armhole).x - size.acrossBackWidth / 2,
      5,
      12,
      STRAP_NOT_SHOULDER,
    ),
    mm(
      'side front',
      'half across front at mid armhole, beyond the body',
      acrossFront - size.acrossFrontWidth / 2,
      0,
      7,
      STRAP_NOT_SHOULDER,
    ),
    {
      ...drafted('side front'),
      name: 'front shoulder slope',
      value: inDegrees(front.shoulderSlope),
      unit: 'degrees',
      low: 20,
      high: 25,
      outside: THIS_BODY,
    },
    {
      ...drafted('side back'),
      name: 'back shoulder slope',
      value: inDegrees(back.shoulderSlope),
      unit: 'degrees',
      low: 16,
      high: 21,
      outside: THIS_BODY,
    },
    bustDartFigure(inDegrees(front.dart), size.bustGirth - size.underBustGirth),
    mm('side front', 'bust point from side neck', size.neckShoulderPointToBustPoint, 240, 280),
    mm('side front', 'bust point from centre front', size.bustPointWidth / 2, 85, 105),
    mm('side front', 'under-bust seam below the bust point', levels.underBust - levels.bust, 65, 95),
    mm('side front', 'side seam takes in at the waist, each edge', widths.sideAtWaist, 10, 30),
    mm('side front', 'front princess takes in at the waist', widths.frontPrincess.waist, 20, 50),
    mm('side back', 'back princess takes in at the waist', widths.backPrincess.waist, 20, 45),
    mm('centre back', 'centre back takes in at the waist', widths.centreBackAtWaist, 5, 20),
    mm('insert', 'insert top above the bust point', levels.bust - front.strap.inner.y, 60, 110),
    mm('strap', 'strap, finished width', styling.strapWidth, 25, 50),
    mm('strap', 'strap inner edge from side neck', back.strapPosition, 10, 40),
  ];
}

/** The bust dart's usual angles by cup: A, B and C, D and larger. */
function bustDartFigure(value: number, cup: number): ShapeClaim {
  const [low, high] = cup <= 140 ? [10, 18] : cup <= 180 ? [14, 24] : [20, 34];
  return {
    kind: 'drafted',
    piece: 'side front',
    name: 'bust dart angle',
    value,
    unit: 'degrees',
    low,
    high,
    outside: 'the measured front length asks for it, or the cup is outside A to E',
  };
}
