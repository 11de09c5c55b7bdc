import type { Body } from '../../engine/body/body.ts';
import { fitted } from '../../engine/body/fitting.ts';
import { backNeckRise, backNeckWidth } from '../../engine/body/neck.ts';
import { moved, type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import { angleOf, heading, scaled } from '../../engine/geometry/vector.ts';
import { type ConstructionLog, degrees, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import { fittedStrap } from './fitted-strap.ts';
import type { Levels } from './levels.ts';
import { loweredShoulder } from './lowered-shoulder.ts';
import { bodiceRules as rules } from './rules.ts';
import { layStrap, type StrapPath } from './straps-path.ts';
import { armholeWedge, necklineWedge } from './wedges.ts';
import type { Widths } from './widths.ts';

/** The back before it is cut into panels. Centre back is x = 0, the back neck point is the origin. */
export interface BackFoundation {
  /** How far the shoulder falls, as the fitting found it, radians. */
  readonly shoulderSlope: number;
  /** The strap as it lies on the side back, once the wedges of a fitting are closed. */
  readonly strap: StrapPath;
  /** The centre back's corner at the neckline: the strap's inner end, but for those wedges. */
  readonly neckCorner: Point;
  /** Where along the shoulder, from the side neck, the strap's inner edge crosses it, mm. */
  readonly strapPosition: number;
  /** The centre back seam at the neckline, and at the waist. */
  readonly centreNeck: Point;
  readonly centreWaist: Point;
  /** The side seam at the underarm, and at the waist. */
  readonly underarm: Point;
  readonly sideWaist: Point;
  /** x of the princess line at bust level, and at the waist before anything is taken in. */
  readonly princessAtBust: number;
  readonly princessAtWaist: number;
  /** How far the centre back seam has come in at a level. */
  readonly centreBackAt: (level: number) => number;
}

/** Draws the back neck, shoulder, strap, centre back and side seam. */
export function drawBack(
  body: Body,
  styling: BodiceStyling,
  levels: Levels,
  widths: Widths,
  log: ConstructionLog,
): BackFoundation {
  const { neckBaseGirth, shoulderSlope } = body.size;
  const neckWidth = log.mm(
    'Back neck width',
    `from neck base girth ${figure(neckBaseGirth)}`,
    backNeckWidth(neckBaseGirth),
    'a sixth of the neck girth (L. I. Baldt, Clothing for Women, 1916) + 5 mm (common practice)',
  );
  const neckRise = log.mm(
    'Side neck above the back neck point',
    `from back neck width ${figure(neckWidth)}`,
    backNeckRise(neckBaseGirth),
    'a third of the width: Bunka draft, from memory',
  );
  const slope = log.angle(
    'Back shoulder slope',
    `shoulder slope ${degrees(shoulderSlope)} - ${rules.shoulderTilt.value}°`,
    shoulderSlope - (rules.shoulderTilt.value * Math.PI) / 180,
    rules.shoulderTilt,
  );
  const sideNeck = point(neckWidth, -neckRise);

  const centreBackAt = (level: number): number => (widths.centreBackAtWaist * level) / levels.waist;
  const depth = styling.backNecklineDepth;
  const centreNeck = point(centreBackAt(depth), depth);
  const sway = fitted(body.fitting, 'sway back');
  const centreWaistLevel =
    sway === 0
      ? levels.waist
      : log.mm(
          'Waist level at the centre back',
          `${figure(levels.waist)} - sway back ${figure(sway)}, rising to nothing at the side seam`,
          levels.waist - sway,
          'fitting',
        );
  const centreWaist = point(centreBackAt(centreWaistLevel), centreWaistLevel);
  log.say(
    'Centre back seam',
    `straight from the back neck point to ${figure(widths.centreBackAtWaist)} mm in at the waist; the neckline begins ${depth} mm down`,
    'styling',
  );

  const side = centreBackAt(levels.bust) + widths.back + widths.backPrincess.bust;
  const perMm = widths.sideAtWaist / (levels.waist - levels.bust);
  const underarm = point(side + perMm * (levels.bust - levels.underarm), levels.underarm);
  const sideWaist = point(side - widths.sideAtWaist, levels.waist);
  log.say(
    'Back side seam',
    `straight through ${figure(side)} mm at bust level to ${figure(sideWaist.x)} mm at the waist`,
    'construction',
  );

  const rise =
    styling.backNeckline === 'round' ? rules.backNecklineRise.value : rules.backNecklinePoint.value * depth;
  const cornerDown = depth - rise;
  const leanFrom = (crossing: Point): number =>
    crossing.x + rules.backStrapLean.value * (cornerDown - crossing.y);
  const crossingAt = (position: number): Point => moved(sideNeck, scaled(heading(slope), position));
  const outermost = underarm.x - rules.strapInsideUnderarm.value - styling.strapWidth;
  const strapPosition = log.mm(
    'Strap from the side neck',
    `${styling.strapPosition} as chosen, but its outer corner ${rules.strapInsideUnderarm.value} inside the underarm`,
    Math.min(
      styling.strapPosition,
      Math.max(0, styling.strapPosition - (leanFrom(crossingAt(styling.strapPosition)) - outermost)),
    ),
    rules.strapInsideUnderarm,
  );
  const crossing = crossingAt(strapPosition);
  const neckCorner = point(
    log.mm(
      'Back neckline corner from centre back',
      `strap crosses the shoulder at ${figure(crossing.x)} + ${rules.backStrapLean.value} x ${figure(cornerDown - crossing.y)} further down`,
      leanFrom(crossing),
      rules.backStrapLean,
    ),
    cornerDown,
  );
  const onShoulder = (slopes: number): StrapPath =>
    layStrap(neckCorner, sideNeck, slopes, strapPosition, styling.strapWidth);
  const fall = loweredShoulder('back', body, slope, log);
  const laid = onShoulder(fall);
  const strap = fittedStrap(laid, 'back', body.fitting, log);
  log.mm('Back strap', 'from the neckline corner to the shoulder', strap.length, rules.backNecklineRise);

  const { drafted } = widths;
  const draftedCentreBack = (drafted.centreBackAtWaist * levels.bust) / levels.waist;
  const princessAtBust = log.mm(
    'Back princess line at bust level',
    `${rules.backPrincess.value} x back width ${figure(drafted.back)} from the centre back seam`,
    draftedCentreBack + rules.backPrincess.value * drafted.back,
    rules.backPrincess,
  );
  const princessAtWaist = log.mm(
    'Back princess line at the waist',
    `${rules.backPrincessLean.value} x back width nearer to the centre`,
    princessAtBust - rules.backPrincessLean.value * drafted.back,
    rules.backPrincessLean,
  );
  const blade = point(princessAtBust, levels.bust);
  const { fitting } = body;
  const atNeckline = necklineWedge('wedge from back neckline', fitting, blade, strap.inner, log);
  const atArmhole = armholeWedge(
    'wedge from back armhole',
    fitting,
    blade,
    onShoulder(slope).outer,
    underarm,
    log,
  );
  return {
    shoulderSlope: fall,
    strap: turnedStrap(strap, blade, atArmhole),
    neckCorner: turnedAbout(strap.inner, blade, -atNeckline),
    strapPosition,
    centreNeck,
    centreWaist,
    underarm,
    sideWaist,
    princessAtBust,
    princessAtWaist,
    centreBackAt,
  };
}

/** A strap's end on its panel, turned about a place of the panel by an angle (radians). */
const turnedStrap = (strap: StrapPath, pivot: Point, angle: number): StrapPath => ({
  ...strap,
  inner: turnedAbout(strap.inner, pivot, angle),
  outer: turnedAbout(strap.outer, pivot, angle),
  down: heading(angleOf(strap.down) + angle),
});
