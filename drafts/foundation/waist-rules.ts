import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** Judged by where the waists of eight bodices hang on forms of the bodies that ship. */
const onWorn = 'judged on eight worn bodices';

/** How low the waist is drawn, all round and in front. */
export const waistRules = ruleTable('FW', {
  frontDips: [
    -4.4,
    'mm',
    'cloth lies in the hollow between breast and belly, which the tape bridges, and the front waist dips below the side seam: what of it is the same for everybody',
    onWorn,
  ],
  frontDipsPerMm: [0.7, 'share', 'and by this share of what the belly stands out', onWorn],
  frontDipsMost: [12, 'mm', 'and by no more than this, or it would be drawn askew', commonPractice],
  standsOut: [
    0.159,
    'share',
    'a girth that is larger stands out further by this share of it, as a circle does',
    '1 / (2 pi)',
  ],
  ribsBelowChest: [
    100,
    'mm',
    'so much smaller than the upper chest is a waist that is as large as the ribs; no cup changes either',
    onWorn,
  ],
  bellyRounds: [
    22,
    'mm',
    'a waist smaller than the ribs becomes a belly by degrees, within about this',
    'so that sizes grow evenly',
  ],
  sideDips: [
    -1.5,
    'mm',
    'the waist at the side seam lies below the waist level, which is measured down the hollow of the back: what of it is the same for everybody',
    onWorn,
  ],
  sideDipsPerMm: [0.65, 'share', 'and lower by this share of what the belly stands out', onWorn],
  sideDipsMost: [16, 'mm', 'and no lower than this', commonPractice],
  centreDips: [
    2,
    'mm',
    'from the princess seam to the centre front, where no breast is below the bust, the front waist dips by this more',
    onWorn,
  ],
});
