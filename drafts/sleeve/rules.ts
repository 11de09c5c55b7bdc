import { commonPractice, ruleTable } from '../../engine/pattern/rule.ts';

/** The numbers of the sleeve draft, each with its reason and source. */
export const sleeveRules = ruleTable('S', {
  capShare: [
    0.33,
    'share',
    'first guess of the cap height, as a share of the armhole girth',
    'a third of the armhole: from memory',
  ],
  notchHeight: [0.4, 'share', 'first guess of the notches, as a share of the cap height', commonPractice],
  notchWidth: [0.6, 'share', 'and as a share of the half sleeve width', commonPractice],
  puffLength: [90, 'mm', 'the seam of a puff sleeve from underarm to hem', commonPractice],
  longPuffLength: [230, 'mm', 'that of a puff sleeve to just above the elbow', commonPractice],
  elasticLess: [
    12.7,
    'mm',
    'the elastic is shorter than the arm by this, to hold',
    'limb girth less half an inch: sewing lesson, read second-hand',
  ],
  elasticOverlap: [12.7, 'mm', 'the ends of the elastic overlap by this', 'half an inch: read second-hand'],
  casingRoom: [
    6.35,
    'mm',
    'a casing is wider than its elastic by this',
    'a quarter inch: Sewing & Craft Alliance, guideline 12.150',
  ],
  turnUnder: [
    6.35,
    'mm',
    'the raw edge of a casing is turned under by this',
    'a quarter inch: Sewing & Craft Alliance, guideline 12.150',
  ],
});
