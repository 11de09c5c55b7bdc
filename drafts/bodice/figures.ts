import type { Body } from '../../engine/body/body.ts';
import { cupOf } from '../../engine/body/cup.ts';
import type { Edge } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf, pointAlong } from '../../engine/geometry/edge.ts';
import { distance, type Point, turnedAbout } from '../../engine/geometry/point.ts';
import { claim, type SourcedBand } from '../../engine/pattern/band-table.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { bodiceBands as bands } from './bands.ts';
import {
  acrossFrontOutside,
  bustDartOutside,
  necklineOutside,
  princessOutside,
  thisBody,
  underarmOutside,
} from './outside-bands.ts';
import type { PanelCut } from './panel-cut.ts';

/** A figure that only the draft knows, in mm or degrees as its band is. */
const figure = (band: SourcedBand, value: number, outside = thisBody): ShapeClaim =>
  claim(band, { kind: 'drafted', piece: 'side front', value, unit: band.unit }, outside);

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** What a pattern cutter looks at in a bodice before it is cut. */
export function bodiceFigures({ plan, armholes }: PanelCut, body: Body): readonly ShapeClaim[] {
  const { size } = body;
  const { levels, widths, front } = plan.foundation;
  const { style, onShoulder, ...lines } = plan.lines;
  const { bust, underarm } = levels;
  const slope = (square: number, turned: number): number => degrees(square - turned - Math.PI / 2);
  const frontArmhole = edgeOf('front armhole', armholes.front.laid);
  const middle = (armhole: Edge): Point => pointAlong(armhole, edgeLength(armhole) / 2).point;
  const acrossFront = turnedAbout(middle(frontArmhole), front.pivot, -front.turned).x;
  return [
    figure(bands.armholeLevel, underarm.value - size.scyeDepth, underarmOutside(plan)),
    figure(bands.acrossFront, acrossFront - size.acrossFrontWidth / 2, acrossFrontOutside(plan)),
    figure(bands.frontShoulder, slope(lines.front.square, front.turned)),
    figure(bands.backShoulder, slope(lines.back.square, lines.back.turned)),
    bustDart(degrees(lines.front.turned + lines.front.turnedIn), cupOf(body).letter, bustDartOutside(plan)),
    figure(bands.bustPointDown, size.neckShoulderPointToBustPoint),
    figure(bands.bustPointOut, size.bustPointWidth / 2),
    figure(bands.underBustSeam, front.underBust.side.y - bust.value),
    figure(bands.sideSeam, distance(front.side.underarm, front.side.waist), underarmOutside(plan)),
    figure(bands.sideAtWaist, widths.sideAtWaist.value),
    figure(bands.frontPrincessAtWaist, widths.frontPrincess.waist.value, princessOutside),
    figure(bands.backPrincessAtWaist, widths.backPrincess.waist.value),
    figure(bands.centreBackAtWaist, widths.centreBackAtWaist.value),
    figure(bands.neckline, bust.value - lines.front.corner.y, necklineOutside(plan)),
    ...(style.shoulder === 'strap'
      ? [
          figure(bands.strapWidth, onShoulder.outer - onShoulder.inner),
          figure(bands.strapInside, onShoulder.inner),
        ]
      : []),
  ];
}

/** The bust dart, degrees; its usual angle grows with the cup. */
function bustDart(value: number, cup: string, outside: string): ShapeClaim {
  const small = ['less than AA', 'AA', 'A'].includes(cup);
  const band = small ? bands.dartToA : ['B', 'C'].includes(cup) ? bands.dartToC : bands.dartFromD;
  return { ...figure(band, value, outside), name: 'bust dart angle' };
}
