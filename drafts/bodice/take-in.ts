import type { Body } from '../../engine/body/body.ts';
import { type FittedLevel, type FittedSeam, takenIn } from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import type { Levels } from './levels.ts';
import type { SharedWidths, Widths } from './widths.ts';

/**
 * Takes the panels in, or lets them out, where a fitting pinned them: each edge of the seam by as much, at its level,
 * and in proportion where the seam runs straight on. The other seams stay, so the finished girth changes.
 */
export function takeIn(
  body: Body,
  styling: BodiceStyling,
  shared: SharedWidths,
  levels: Levels,
  log: ConstructionLog,
): Widths {
  const at = (seam: FittedSeam, level: FittedLevel): number => takenIn(body.fitting, seam, level);
  const side = { bust: at('side seam', 'bust'), waist: at('side seam', 'waist') };
  const share = (levels.underBust - levels.bust) / (levels.waist - levels.bust);
  const sideUnderBust = side.bust + share * (side.waist - side.bust);
  const front = {
    underBust: at('front princess seam', 'under-bust'),
    waist: at('front princess seam', 'waist'),
  };
  const back = {
    underBust: at('back princess seam', 'under-bust'),
    waist: at('back princess seam', 'waist'),
  };
  const centreBack = at('centre back seam', 'waist');
  const centreBackAt = (level: number): number => (centreBack * level) / levels.waist;
  const taken = {
    bust: 2 * side.bust + centreBackAt(levels.bust),
    underBust: 2 * (sideUnderBust + front.underBust + back.underBust) + centreBackAt(levels.underBust),
    waist: 2 * (side.waist + front.waist + back.waist) + centreBack,
  };
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  sayTaken('bust', bustGirth + styling.bustEase, bustGirth, 2 * taken.bust, log);
  sayTaken('under-bust', underBustGirth + styling.underBustEase, underBustGirth, 2 * taken.underBust, log);
  sayTaken('waist', waistGirth + styling.waistEase, waistGirth, 2 * taken.waist, log);
  return {
    front: shared.front - side.bust,
    back: shared.back - side.bust - centreBackAt(levels.bust),
    sideAtWaist: shared.sideAtWaist + side.waist - side.bust,
    centreBackAtWaist: shared.centreBackAtWaist + centreBack,
    frontPrincess: {
      underBust: shared.frontPrincess.underBust + 2 * front.underBust,
      waist: shared.frontPrincess.waist + 2 * front.waist,
    },
    backPrincess: {
      bust: shared.backPrincess.bust,
      underBust: shared.backPrincess.underBust + 2 * back.underBust,
      waist: shared.backPrincess.waist + 2 * back.waist,
    },
    halfWaist: shared.halfWaist - taken.waist,
    drafted: shared,
    taken,
  };
}

/** The ease that the fitting left at each level, mm: the girths it took in or let out are meant. */
export const easeLeft = (
  styling: BodiceStyling,
  { taken }: Widths,
): Pick<BodiceStyling, 'bustEase' | 'underBustEase' | 'waistEase'> => ({
  bustEase: styling.bustEase - 2 * taken.bust,
  underBustEase: styling.underBustEase - 2 * taken.underBust,
  waistEase: styling.waistEase - 2 * taken.waist,
});

/** Logs a girth (mm) that the fitting changed by intent, and tells the dressmaker. */
function sayTaken(
  level: FittedLevel,
  drafted: number,
  body: number,
  less: number,
  log: ConstructionLog,
): void {
  if (less === 0) return;
  const finished = log.mm(
    `Fitting, finished girth at the ${level}`,
    `${figure(drafted)} ${less > 0 ? '-' : '+'} ${figure(Math.abs(less))} at the seams that were ${less > 0 ? 'taken in' : 'let out'}, both layers, left and right`,
    drafted - less,
    'fitting',
  );
  const change = `The fitting makes the ${level} ${figure(Math.abs(less))} mm ${less > 0 ? 'smaller' : 'larger'}: ${figure(finished)} mm finished, where the body has ${figure(body)} mm.`;
  const tight = finished < body;
  log.remark({
    code: tight ? 'fitting-tighter-than-body' : 'fitting-changes-girth',
    severity: tight ? 'warning' : 'note',
    path: level,
    value: finished,
    message: tight ? `${change} That is smaller than the body: measure it again.` : change,
  });
}
