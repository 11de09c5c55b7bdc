import type { Body } from '../../engine/body/body.ts';
import {
  changeWords,
  type FittedLevel,
  type FittedSeam,
  type FittingChange,
  fitted,
  takenIn,
} from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import type { Levels } from './levels.ts';
import type { SharedWidths, Widths } from './widths.ts';

/**
 * Takes the panels in, or lets them out, where a fitting pinned them: each edge of the seam by as much, at its level,
 * and in proportion where the seam runs straight on. The other seams stay, so the finished girth changes. A broader
 * back moves its side seam out whole; what that adds below the bust, the back princess seam takes up again.
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
    bust: at('back princess seam', 'bust'),
    underBust: at('back princess seam', 'under-bust'),
    waist: at('back princess seam', 'waist'),
  };
  const broader = (fitted(body.fitting, 'broad back') - fitted(body.fitting, 'narrow back')) / 2;
  const centreBack = at('centre back seam', 'waist');
  const centreBackAt = (level: number): number => (centreBack * level) / levels.waist;
  const taken = {
    bust: 2 * (side.bust + back.bust) + centreBackAt(levels.bust) - broader,
    underBust: 2 * (sideUnderBust + front.underBust + back.underBust) + centreBackAt(levels.underBust),
    waist: 2 * (side.waist + front.waist + back.waist) + centreBack,
  };
  sayPinned(body.fitting, ['bust', 'under-bust', 'waist'], log);
  if (broader !== 0)
    log.mm(
      'Fitting, back width at bust',
      `${figure(shared.back)} ${broader > 0 ? '+' : '-'} ${figure(Math.abs(broader))} for a ${broader > 0 ? 'broad' : 'narrow'} back: the side seam moves whole, and below the bust the back princess seam makes up for it`,
      shared.back + broader,
      'fitting',
    );
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  sayTaken('bust', bustGirth + styling.bustEase, bustGirth, 2 * taken.bust, log);
  sayTaken('under-bust', underBustGirth + styling.underBustEase, underBustGirth, 2 * taken.underBust, log);
  sayTaken('waist', waistGirth + styling.waistEase, waistGirth, 2 * taken.waist, log);
  return {
    front: shared.front - side.bust,
    back: shared.back + broader - side.bust - 2 * back.bust - centreBackAt(levels.bust),
    sideAtWaist: shared.sideAtWaist + side.waist - side.bust,
    centreBackAtWaist: shared.centreBackAtWaist + centreBack,
    frontPrincess: {
      underBust: shared.frontPrincess.underBust + 2 * front.underBust,
      waist: shared.frontPrincess.waist + 2 * front.waist,
    },
    backPrincess: {
      bust: shared.backPrincess.bust + 2 * back.bust,
      underBust: shared.backPrincess.underBust + broader + 2 * back.underBust,
      waist: shared.backPrincess.waist + broader + 2 * back.waist,
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

/** Logs what was pinned at the seams at these levels. */
function sayPinned(
  changes: readonly FittingChange[],
  levels: readonly FittedLevel[],
  log: ConstructionLog,
): void {
  for (const change of changes)
    if ('seam' in change && levels.includes(change.level))
      log.say(`Fitting, ${changeWords(change)}`, `${figure(change.mm)} mm on each layer`, 'fitting');
}

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
    `${figure(drafted)} ${less > 0 ? '-' : '+'} ${figure(Math.abs(less))} ${less > 0 ? 'taken from' : 'given to'} the seams, both layers, left and right`,
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
