import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { ByGore } from './gore-sizes.ts';
import { skirtRules as rules } from './rules.ts';

/**
 * The hip of each gore, mm, for the waists it continues. The front half is a little wider than the back half, whatever
 * their waists are: so the side seam hangs straight from a waist that is balanced alike, and no cup moves it.
 */
export function goreHips(halfHip: number, waist: ByGore, log: ConstructionLog): ByGore {
  const balance = rules.sideBalance.value;
  const half = (words: string, way: 1 | -1): number =>
    log.mm(
      `Hip of the ${words} half`,
      `(half hip ${figure(halfHip)} ${way > 0 ? '+' : '-'} ${balance}) / 2`,
      (halfHip + way * balance) / 2,
      rules.sideBalance,
    );
  const front = half('front', 1);
  const back = half('back', -1);
  const frontMore = front - waist['centre front'] - waist['side front'];
  const backMore = back - waist['side back'] - waist['centre back'];
  log.say(
    'The gores grow from waist to hip',
    `in front by ${figure(frontMore)} mm, shared ${rules.centreFrontHip.value} and ${rules.sideFrontHip.value} from the centre; behind by ${figure(backMore)} mm, shared ${rules.centreBackHip.value} and ${rules.sideBackHip.value}`,
    rules.centreFrontHip,
  );
  return {
    'centre front': waist['centre front'] + rules.centreFrontHip.value * frontMore,
    'side front': waist['side front'] + rules.sideFrontHip.value * frontMore,
    'side back': waist['side back'] + rules.sideBackHip.value * backMore,
    'centre back': waist['centre back'] + rules.centreBackHip.value * backMore,
  };
}
