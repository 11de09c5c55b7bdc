import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of lining and facings, each with its reason and source. */
export const liningRules = ruleTable('L', {
  neckFacing: [60, 'mm', 'a neck facing reaches this far from the neckline', commonPractice],
  armholeFacing: [50, 'mm', 'an armhole facing reaches this far from the armhole', commonPractice],
  facingsMeet: [
    0.5,
    'share',
    'along the shoulder a facing takes no more than this share of it, so that two do not lie on each other there',
    commonPractice,
  ],
});
