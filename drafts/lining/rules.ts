import { commonPractice, ruleTable } from '../../engine/pattern/rule.ts';

/** The numbers of lining and facings, each with its reason and source. */
export const liningRules = ruleTable('L', {
  neckFacing: [60, 'mm', 'a back neck facing reaches this far below the neckline', commonPractice],
  armholeFacing: [50, 'mm', 'an armhole facing reaches this far below the underarm', commonPractice],
});
