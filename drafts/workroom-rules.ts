import { leastAllowance, trialAllowance } from '../engine/body/fitting.ts';
import { type Rule, ruleTable } from '../engine/pattern/rule.ts';
import type { Amount } from '../engine/pattern/sewing.ts';
import { commonPractice } from '../engine/sources.ts';

/** The numbers of the workroom, each with its source. */
export const workroomRules = ruleTable('W', {
  rowsApart: [6.35, 'mm', 'gathering rows lie this far apart', 'a quarter inch: lesson pages, second-hand'],
  longStitch: [4, 'mm', 'length of the stitches of a gathering row', commonPractice],
  stayLine: [
    2,
    'mm',
    'stay stitching lies this far inside the allowance, beside the stitching line',
    commonPractice,
  ],
  trialAllowance: [trialAllowance, 'mm', 'allowance of a trial bodice, for letting out', commonPractice],
  opening: [50, 'mm', 'opening left in a casing', 'two inches: a sewing handbook’s chapter on casings'],
  edgeStitch: [
    3.175,
    'mm',
    'the fold of a casing is stitched this far from its edge',
    'an eighth of an inch: Sewing & Craft Alliance, guideline 12.150',
  ],
  underarmTrim: [
    6.35,
    'mm',
    'the allowance of the armhole is trimmed to this at the underarm',
    'a quarter inch: Association of Sewing and Design Professionals, Standards of Quality, p. 19',
  ],
  leastAllowance: [
    leastAllowance,
    'mm',
    'a seam needs so much of its allowance to hold: no seam is let out further',
    commonPractice,
  ],
});

/** Numbers of the trade as amounts of a step. */
export const amounts = (...rules: readonly Rule[]): readonly Amount[] =>
  rules.map(({ id, says, value, source }) => ({ says, mm: value, source: `${id}, ${source}` }));
