import { trialAllowance } from '../../engine/body/fitting.ts';
import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the trial bodice, each with its reason and source. */
export const trialRules = ruleTable('T', {
  allowance: [trialAllowance, 'mm', 'every seam of a trial bodice has this, to be let out', commonPractice],
  frontNeckDepth: [
    8,
    'mm',
    'the neck base lies this much further below the side neck in front than half the neck is wide',
    'between 5 mm, Bunka draft, from memory, and 3/8 in, L. I. Baldt, Clothing for Women, 1916',
  ],
});
