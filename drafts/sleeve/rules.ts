import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the sleeve draft, each with its reason and source. */
export const sleeveRules = ruleTable('S', {
  capShare: [
    0.29,
    'share',
    'before it is puffed, the cap stands this share of the armhole girth high',
    'three tenths to a third of the armhole: from memory',
  ],
  capStrays: [
    2,
    'mm',
    'at its notches the cap lies no further than this, across and down, from the armhole laid on it',
    commonPractice,
  ],
  shortLength: [120, 'mm', 'the seam of a short plain sleeve from underarm to hem', commonPractice],
  elbowUp: [
    25,
    'mm',
    'the elbow lies this much above the middle of the sleeve seam to the wrist',
    commonPractice,
  ],
  elbowEase: [50, 'mm', 'room around the bent elbow in a plain sleeve', commonPractice],
  wristEase: [45, 'mm', 'room around the wrist, so that the hand goes through', commonPractice],
  elbowOut: [
    10,
    'mm',
    'over the elbow the back seam of a long sleeve stands out by this, and what it is longer is eased in',
    commonPractice,
  ],
  elbowStretch: [80, 'mm', 'above and below the elbow it is eased in for so far', commonPractice],
  puffLength: [90, 'mm', 'the seam of a puff sleeve from underarm to hem', commonPractice],
  longPuffLength: [230, 'mm', 'that of a puff sleeve to just above the elbow', commonPractice],
  plainHem: [19.05, 'mm', 'the hem of a plain sleeve is turned up by this', commonPractice],
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
  aboveHem: [40, 'mm', 'a plain sleeve tapers over this at least above its hem', commonPractice],
  armEase: [50, 'mm', 'room around the upper arm', commonPractice],
  crownToSpan: [
    1.05,
    'ratio',
    'the crown of a plain cap is at least this many times as long as its notches lie apart, or it could not rise between them',
    'found on 194 women of the survey: none under 1.04 can be drawn, all over 1.05 can',
  ],
  leastArmEase: [
    20,
    'mm',
    'for that a full arm in a small armhole is given less room, but no less than this',
    commonPractice,
  ],
});
