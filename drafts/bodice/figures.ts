import type { Body } from '../../engine/body/body.ts';
import type { Edge } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf, pointAlong } from '../../engine/geometry/edge.ts';
import { distance, type Point, turnedAbout } from '../../engine/geometry/point.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import type { PanelCut } from './panel-cut.ts';

const STRAP_NOT_SHOULDER =
  'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a whole shoulder';
const THIS_BODY = 'this body differs from the regular adult that the band is for';

/** What a pattern cutter looks at in a bodice before it is cut. */
export function bodiceFigures({ plan, armholes }: PanelCut, { size }: Body): readonly ShapeClaim[] {
  const { levels, widths, front } = plan.foundation;
  const { style, ...lines } = plan.lines;
  const mm = (name: string, value: number, low: number, high: number, outside = THIS_BODY): ShapeClaim => ({
    kind: 'drafted',
    piece: 'side front',
    name,
    value,
    unit: 'mm',
    low,
    high,
    outside,
  });
  const degrees = (name: string, angle: number, low: number, high: number): ShapeClaim => ({
    kind: 'drafted',
    piece: 'side front',
    name,
    value: (angle * 180) / Math.PI,
    unit: 'degrees',
    low,
    high,
    outside: THIS_BODY,
  });
  const frontArmhole = edgeOf('front armhole', armholes.front.laid);
  const middle = (armhole: Edge): Point => pointAlong(armhole, edgeLength(armhole) / 2).point;
  const acrossFront = turnedAbout(middle(frontArmhole), front.pivot, -front.turned).x;
  const armhole = style.shoulder === 'strap' ? STRAP_NOT_SHOULDER : THIS_BODY;
  const { bust, underBust, underarm } = levels;
  return [
    mm('armhole level below the scye depth', underarm.value - size.scyeDepth, 10, 25),
    mm(
      'half across front at mid armhole, beyond the body',
      acrossFront - size.acrossFrontWidth / 2,
      0,
      7,
      armhole,
    ),
    degrees('front shoulder slope', lines.front.square - front.turned - Math.PI / 2, 20, 25),
    degrees('back shoulder slope', lines.back.square - lines.back.turned - Math.PI / 2, 16, 21),
    bustDartFigure(
      ((lines.front.turned + lines.front.turnedIn) * 180) / Math.PI,
      size.bustGirth - size.underBustGirth,
    ),
    mm('bust point from side neck', size.neckShoulderPointToBustPoint, 240, 280),
    mm('bust point from centre front', size.bustPointWidth / 2, 85, 105),
    mm('under-bust seam below the bust point', underBust.value - bust.value, 65, 95),
    mm('side seam', distance(front.side.underarm, front.side.waist), 170, 210),
    mm('side seam takes in at the waist, each edge', widths.sideAtWaist.value, 10, 30),
    mm('front princess takes in at the waist', widths.frontPrincess.waist.value, 20, 50),
    mm('back princess takes in at the waist', widths.backPrincess.waist.value, 20, 45),
    mm('centre back takes in at the waist', widths.centreBackAtWaist.value, 5, 20),
    mm('neckline above the bust point', bust.value - lines.front.corner.y, 60, 110),
    ...(style.shoulder === 'strap'
      ? [
          mm('strap, finished width', plan.lines.onShoulder.outer - plan.lines.onShoulder.inner, 25, 50),
          mm('strap inner edge from side neck', plan.lines.onShoulder.inner, 10, 40),
        ]
      : []),
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
