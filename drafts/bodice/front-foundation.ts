import type { Body } from '../../engine/body/body.ts';
import { fitted } from '../../engine/body/fitting.ts';
import { backNeckRise, backNeckWidth } from '../../engine/body/neck.ts';
import { type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import { angleOf, heading, type Vector } from '../../engine/geometry/vector.ts';
import { type ConstructionLog, degrees, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import { fittedStrap } from './fitted-strap.ts';
import type { Levels } from './levels.ts';
import { loweredShoulder } from './lowered-shoulder.ts';
import { bodiceRules as rules } from './rules.ts';
import { layStrap, type StrapPath } from './straps-path.ts';
import { armholeWedge, necklineWedge } from './wedges.ts';
import type { Widths } from './widths.ts';

/** The front before it is cut into panels. Centre front is x = 0; levels are those of the back. */
export interface FrontFoundation {
  /** How far the shoulder falls, as the fitting found it, radians. */
  readonly shoulderSlope: number;
  /** Where the princess line crosses the bust level: the pivot of the bust dart. */
  readonly pivot: Point;
  /** What the princess seam takes up over the bust, radians: the bust dart and the wedges of a fitting. */
  readonly dart: number;
  /** How far of it the side front's strap end has turned to the side. */
  readonly turned: number;
  /** The strap as it lies above the insert, dart open. */
  readonly strap: StrapPath;
  /** The strap's end on the side front, once the dart is turned into the princess seam. */
  readonly strapInner: Point;
  readonly strapOuter: Point;
  readonly strapDown: Vector;
  /** The side seam at the underarm, and at the waist. */
  readonly underarm: Point;
  readonly sideWaist: Point;
  /** The princess seam at under-bust and waist level: centre front panel, then side front. */
  readonly underBust: { readonly centre: Point; readonly side: Point };
  readonly waist: { readonly centre: Point; readonly side: Point };
}

/**
 * Draws the front neck, shoulder, bust dart, strap and side seam, and turns the dart into the princess seam. The
 * strap crosses the shoulder where the back has it, `strapPosition` mm from the side neck.
 */
export function drawFront(
  body: Body,
  styling: BodiceStyling,
  levels: Levels,
  widths: Widths,
  strapPosition: number,
  log: ConstructionLog,
): FrontFoundation {
  const {
    neckBaseGirth,
    shoulderSlope,
    bustPointWidth,
    backNeckPointToWaist,
    neckShoulderPointToWaist,
    neckShoulderPointToBustPoint,
  } = body.size;

  const bustPoint = log.mm(
    'Bust point from centre front',
    `bust point width ${figure(bustPointWidth)} / 2`,
    bustPointWidth / 2,
    'measurement',
  );
  const pivot = point(
    log.mm(
      'Front princess line at bust level',
      `bust point ${figure(bustPoint)} + ${styling.princessOffset}`,
      bustPoint + styling.princessOffset,
      'styling',
    ),
    levels.bust,
  );
  const neckWidth = log.mm(
    'Front neck width',
    `back neck width ${figure(backNeckWidth(neckBaseGirth))} - ${rules.frontNeckNarrower.value}`,
    backNeckWidth(neckBaseGirth) - rules.frontNeckNarrower.value,
    rules.frontNeckNarrower,
  );
  const neckHeight = log.mm(
    'Side neck above the bust level',
    `so that it lies ${figure(neckShoulderPointToBustPoint)} from the bust point`,
    Math.sqrt(neckShoulderPointToBustPoint ** 2 - (bustPoint - neckWidth) ** 2),
    'measurement',
  );
  const sideNeck = point(neckWidth, levels.bust - neckHeight);

  const backLength = backNeckPointToWaist + backNeckRise(neckBaseGirth) - fitted(body.fitting, 'round back');
  const intake = log.mm(
    'Bust dart at the side seam',
    `front length ${figure(neckShoulderPointToWaist)} - back length from side neck ${figure(backLength)} + ${rules.frontHang.value}`,
    neckShoulderPointToWaist - backLength + rules.frontHang.value,
    rules.frontHang,
  );
  const leg = widths.front - pivot.x;
  const dart = log.angle(
    'Bust dart angle',
    `2 asin(${figure(intake)} / (2 x ${figure(leg)}))`,
    2 * Math.asin(Math.min(1, Math.max(-1, intake / (2 * leg)))),
    'chord of a circle',
  );

  const slope = log.angle(
    'Front shoulder slope',
    `shoulder slope ${degrees(shoulderSlope)} + ${rules.shoulderTilt.value}°`,
    shoulderSlope + (rules.shoulderTilt.value * Math.PI) / 180,
    rules.shoulderTilt,
  );
  const perMm = widths.sideAtWaist / (levels.waist - levels.bust);
  const underarm = point(widths.front + perMm * (levels.bust - levels.underarm), levels.underarm);
  const sideWaist = point(widths.front - widths.sideAtWaist, levels.waist);
  log.say(
    'Front side seam',
    `the back side seam's mirror image: straight through ${figure(widths.front)} mm at bust level to ${figure(sideWaist.x)} mm at the waist`,
    'construction',
  );

  const chosenHeight = (1 - styling.necklineDepth) * neckHeight;
  const strapAboveBust = rules.armholeRoom.value + levels.bust - levels.underarm;
  const room = underarm.x - rules.strapInsideFrontUnderarm.value - pivot.x;
  const [sine, cosine] = [Math.sin(dart), Math.cos(dart)];
  const mostOuter = Math.min(
    (room - chosenHeight * sine) / cosine,
    (room - strapAboveBust * (sine / cosine)) * cosine,
  );
  const halfWidth = log.mm(
    'Front neckline half width',
    `${styling.necklineWidth} x ${figure(bustPoint)}, but the strap's outer corner ${rules.strapInsideFrontUnderarm.value} inside the underarm once the dart is closed`,
    Math.min(styling.necklineWidth * bustPoint, pivot.x + mostOuter - styling.strapWidth),
    rules.strapInsideFrontUnderarm,
  );
  const outerFromPivot = halfWidth + styling.strapWidth - pivot.x;
  const neededHeight = (strapAboveBust + outerFromPivot * sine) / cosine;
  const necklineHeight = log.mm(
    'Front neckline above the bust level',
    `(1 - ${styling.necklineDepth}) x ${figure(neckHeight)}, at least ${figure(neededHeight)} so that the closed dart leaves ${rules.armholeRoom.value} above the underarm`,
    Math.max(chosenHeight, neededHeight),
    rules.armholeRoom,
  );
  const neckCorner = point(halfWidth, levels.bust - necklineHeight);
  const onShoulder = (slopes: number): StrapPath =>
    layStrap(neckCorner, sideNeck, slopes, strapPosition, styling.strapWidth);
  const fall = loweredShoulder('front', body, slope, log);
  const laid = onShoulder(fall);
  const strap = fittedStrap(laid, 'front', body.fitting, log);
  log.mm('Front strap', 'from the neckline corner to the shoulder', strap.length, 'construction');

  log.say(
    'Dart into the princess seam',
    `cut the princess line and close the dart: the strap end turns ${degrees(dart)} to the side about the bust level`,
    'pivoting a dart, common practice, no source',
  );
  const closed = turnedAbout(onShoulder(slope).outer, pivot, dart);
  const atNeckline = necklineWedge('wedge from neckline', body.fitting, pivot, strap.inner, log);
  const atArmhole = armholeWedge('wedge from armhole', body.fitting, pivot, closed, underarm, log);
  const turned = dart + atArmhole;

  const part = rules.centreFrontPart.value;
  const split = (at: 'underBust' | 'waist') => {
    const drafted = widths.drafted.frontPrincess[at];
    const fittedEach = (widths.frontPrincess[at] - drafted) / 2;
    return {
      centre: point(pivot.x - part * drafted - fittedEach, levels[at]),
      side: point(pivot.x + (1 - part) * drafted + fittedEach, levels[at]),
    };
  };
  const underBust = split('underBust');
  const waist = split('waist');
  log.say(
    'Front princess seam below the bust',
    `centre front panel ${figure(underBust.centre.x)} mm wide under the bust and ${figure(waist.centre.x)} mm at the waist, side front from ${figure(underBust.side.x)} and ${figure(waist.side.x)} mm`,
    rules.centreFrontPart,
  );
  return {
    shoulderSlope: fall,
    pivot,
    dart: turned + atNeckline,
    turned,
    strap: { ...strap, inner: turnedAbout(strap.inner, pivot, -atNeckline) },
    strapInner: turnedAbout(strap.inner, pivot, turned),
    strapOuter: turnedAbout(strap.outer, pivot, turned),
    strapDown: heading(angleOf(strap.down) + turned),
    underarm,
    sideWaist,
    underBust,
    waist,
  };
}
