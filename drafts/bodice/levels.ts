import type { Body } from '../../engine/body/body.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';
import { bodiceRules as rules } from './rules.ts';

/** The level lines shared by front and back: how far each lies below the back neck point, mm. */
export interface Levels {
  readonly underarm: number;
  readonly bust: number;
  readonly underBust: number;
  readonly waist: number;
}

/** Draws the level lines across the paper. */
export function drawLevels(body: Body, styling: BodiceStyling, log: ConstructionLog): Levels {
  const { backNeckPointToWaist, neckShoulderPointToWaist, neckShoulderPointToBustPoint, scyeDepth } =
    body.size;

  const waist = log.mm(
    'Waist level',
    'back neck point to waist, measured down the centre back',
    backNeckPointToWaist,
    'measurement',
  );
  const bustToWaist = log.mm(
    'Bust point to waist',
    `neck over bust to waist ${figure(neckShoulderPointToWaist)} - neck to bust point ${figure(neckShoulderPointToBustPoint)}`,
    neckShoulderPointToWaist - neckShoulderPointToBustPoint,
    'measurements',
  );
  const bust = log.mm(
    'Bust level',
    `up from the waist: ${figure(waist)} - ${figure(bustToWaist)}`,
    waist - bustToWaist,
    'measurements',
  );
  const drop = rules.underarmDrop;
  const underarm = log.mm(
    'Underarm level',
    `scye depth ${figure(scyeDepth)} + ${drop.value}, but ${rules.underarmAboveBust.value} above the bust level`,
    Math.min(scyeDepth + drop.value, bust - rules.underarmAboveBust.value),
    drop,
  );
  const chosen = styling.underBustDrop;
  const below =
    typeof chosen === 'number'
      ? log.mm('Under-bust seam below the bust point', 'as chosen', chosen, 'styling')
      : log.mm(
          'Under-bust seam below the bust point',
          `${rules.underBustShare.value} x ${figure(bustToWaist)}, at most ${rules.underBustLimit.value}`,
          Math.min(rules.underBustShare.value * bustToWaist, rules.underBustLimit.value),
          rules.underBustShare,
        );
  const underBust = log.mm(
    'Under-bust level',
    `bust level ${figure(bust)} + ${figure(below)}`,
    bust + below,
    'construction',
  );
  return { underarm, bust, underBust, waist };
}
