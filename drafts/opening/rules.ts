import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the opening, each with its reason and source. */
export const openingRules = ruleTable('O', {
  belowWaist: [
    200,
    'mm',
    'the zip of a fitted skirt ends no further below the waist than this',
    'from memory',
  ],
  stockStep: [50, 'mm', 'zips are sold in lengths that differ by this', 'stock lengths, from memory'],
  belowUnderarm: [20, 'mm', 'a side zip begins this far below the underarm', commonPractice],
  sliderBelow: [10, 'mm', 'the slider of a back zip ends this far below the neckline', commonPractice],
  zipStrip: [25, 'mm', 'a strip of interfacing under a zip is this wide', commonPractice],
  underlap: [3, 'mm', 'under a lapped zip the hidden edge stands out by this', commonPractice],
  stayTurned: [25, 'mm', 'each end of a waist stay is turned under by this', commonPractice],
});
