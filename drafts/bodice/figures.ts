import type { Body } from '../../engine/body/body.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { Edge } from '../../engine/geometry/curve.ts';
import { edgeLength, pointAlong } from '../../engine/geometry/edge.ts';
import { distance, type Point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { cross, unit } from '../../engine/geometry/vector.ts';
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
  const drafted = { kind: 'drafted', piece: 'side front' } as const;
  const mm = (name: string, value: number, low: number, high: number, outside = THIS_BODY): ShapeClaim => ({
    ...drafted,
    name,
    value,
    unit: 'mm',
    low,
    high,
    outside,
  });
  const edge = (name: string, ...curves: readonly string[]): Edge => ({
    name,
    curves: solvedCurves(solution, curves),
  });
  const inDegrees = (angle: number): number => (angle * 180) / Math.PI;

  const frontArmhole = edge('front armhole', frontLines.armhole);
  const backArmhole = edge('back armhole', backLines.armhole);
  const frontHalf = edgeLength(frontArmhole) + front.strap.length;
  const backHalf = edgeLength(backArmhole) + back.strap.length;
  const middle = (armhole: Edge): Point => pointAlong(armhole, edgeLength(armhole) / 2).point;
  const acrossFront = turnedAbout(middle(frontArmhole), front.pivot, -front.turned).x;
  const princess = edge('side front princess', ...frontLines.sidePrincess);
  const fullest = fullestPlace(princess);

  return [
    mm('armhole level below the scye depth', levels.underarm - size.scyeDepth, 10, 25),
    {
      ...drafted,
      name: 'armhole girth, of bust girth',
      value: (frontHalf + backHalf) / size.bustGirth,
      unit: 'share',
      low: 0.43,
      high: 0.49,
      outside: STRAP_NOT_SHOULDER,
    },
    mm('back armhole longer than front', backHalf - frontHalf, 0, 20, STRAP_NOT_SHOULDER),
    mm(
      'half across back at mid armhole, beyond the body',
      middle(backArmhole).x - size.acrossBackWidth / 2,
      5,
      12,
      STRAP_NOT_SHOULDER,
    ),
    mm(
      'half across front at mid armhole, beyond the body',
      acrossFront - size.acrossFrontWidth / 2,
      0,
      7,
      STRAP_NOT_SHOULDER,
    ),
    {
      ...drafted,
      name: 'front shoulder slope',
      value: inDegrees(front.shoulderSlope),
      unit: 'degrees',
      low: 20,
      high: 25,
      outside: THIS_BODY,
    },
    {
      ...drafted,
      name: 'back shoulder slope',
      value: inDegrees(back.shoulderSlope),
      unit: 'degrees',
      low: 16,
      high: 21,
      outside: THIS_BODY,
    },
    bustDartFigure(inDegrees(front.dart), size.bustGirth - size.underBustGirth),
    mm('bust point from side neck', size.neckShoulderPointToBustPoint, 240, 280),
    mm('bust point from centre front', size.bustPointWidth / 2, 85, 105),
    mm('under-bust seam below the bust point', levels.underBust - levels.bust, 65, 95),
    mm('side seam', distance(front.underarm, front.sideWaist), 170, 210),
    mm('side seam takes in at the waist, each edge', widths.sideAtWaist, 10, 30),
    mm('front princess takes in at the waist', widths.frontPrincess.waist, 20, 50),
    mm('back princess takes in at the waist', widths.backPrincess.waist, 20, 45),
    mm('centre back takes in at the waist', widths.centreBackAtWaist, 5, 20),
    mm('side front princess edge beyond its chord', fullest.height, 10, 35),
    mm('its fullest place from the bust level', Math.abs(fullest.at.y - levels.bust), 0, 15),
    mm('insert top above the bust point', levels.bust - front.strap.inner.y, 60, 110),
    mm('strap, finished width', styling.strapWidth, 25, 50),
    mm('strap inner edge from side neck', back.strapPosition, 10, 40),
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

/** Where an edge stands out furthest to the left of its chord as walked, and how far (mm). */
function fullestPlace(edge: Edge): { readonly at: Point; readonly height: number } {
  const length = edgeLength(edge);
  const { point: from } = pointAlong(edge, 0);
  const along = unit(vectorBetween(from, pointAlong(edge, length).point));
  const samples = Array.from({ length: 201 }, (_, i) => pointAlong(edge, (length * i) / 200).point);
  const heights = samples.map((at) => ({ at, height: -cross(along, vectorBetween(from, at)) }));
  return heights.reduce((best, place) => (place.height > best.height ? place : best));
}
