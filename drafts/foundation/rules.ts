import { frontHang, greatestBustDart, leastBustDart, underarmAboveBust } from '../../engine/body/bust.ts';
import { neckNumbers } from '../../engine/body/neck.ts';
import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** Least squares over the forms of 95 bodies, cups AA to H: met within 5 mm, root of mean square. */
const onForms = 'fitted to 95 computed forms';

/** Judged by how eight bodices hang on forms of the bodies that ship. */
const onWorn = 'judged on eight worn bodices';

/** The numbers of the foundation, each with its reason and source. */
export const foundationRules = ruleTable('F', {
  frontNeckNarrower: [2, 'mm', 'the front neck is narrower than the back neck by this', 'from memory'],
  shoulderTilt: [
    2,
    'degrees',
    'the front shoulder slopes this much more, the back this much less than the body',
    'Bunka draft, 22 and 18 degrees about 20; from memory',
  ],
  bustEase: [
    60,
    'mm',
    'room around the bust of a fitted bodice with sleeves',
    'for close-fitting bodices, from memory',
  ],
  sleevelessBustEase: [
    50,
    'mm',
    'the same without sleeves: nothing may stand off at the armhole',
    commonPractice,
  ],
  underarmDrop: [
    15,
    'mm',
    'the underarm of a bodice with sleeves lies this far below the scye depth',
    commonPractice,
  ],
  armscyeToDepth: [
    2,
    'ratio',
    'an armscye is this many times as long as its depth',
    'means of 2,208 women: NATICK/TR-89/044, 1988',
  ],
  armscyeShare: [
    0.125,
    'share',
    'of what the measured armscye is longer than that, the underarm drops by this share',
    commonPractice,
  ],
  leastDrop: [8, 'mm', 'the underarm drops at least this far', commonPractice],
  greatestDrop: [25, 'mm', 'and at most this far: an armhole too deep holds the arm down', commonPractice],
  sleevelessRaise: [
    12,
    'mm',
    'without sleeves the underarm lies this much higher, so that nothing shows',
    commonPractice,
  ],
  underarmAboveBust: [
    underarmAboveBust,
    'mm',
    'the underarm stays at least this far above the bust level, so that the level can be measured',
    'so that the bust girth can be checked across the pieces',
  ],
  acrossLevel: [
    0.5,
    'share',
    'across back is measured at this share of the scye depth, and drawn there',
    'between the folds of the arms, about half the scye depth: from memory',
  ],
  acrossBackEase: [8, 'mm', 'each half of the back is wider there than the body by this', commonPractice],
  acrossFrontEase: [3, 'mm', 'each half of the front is wider there than the body by this', commonPractice],
  underBustShare: [
    0.42,
    'share',
    'the under-bust seam lies at this share of the way from bust point to waist',
    commonPractice,
  ],
  underBustLimit: [95, 'mm', 'the under-bust seam lies no further below the bust point', commonPractice],
  frontLarger: [
    5,
    'mm',
    'half the front is wider than half the back by twice this, at the underarm and at the waist: the side seam lies a little behind',
    commonPractice,
  ],
  sideShare: [
    0.27,
    'share',
    'part of what the half takes in from the underarm to the waist that the side seam takes, half on each edge',
    'Bunka draft shares, regrouped for four seams; from memory',
  ],
  centreBackShare: [
    0.1,
    'share',
    'part of it that the centre back seam takes',
    'Bunka draft shares, regrouped for four seams; from memory',
  ],
  centreBackLimit: [20, 'mm', 'the centre back seam takes no more than this', commonPractice],
  princessLean: [
    8,
    'degrees',
    'where the waist is no smaller than the ribs, the front princess edges open to the waist by this much before back and side help',
    commonPractice,
  ],
  backGives: [16, 'mm', 'then half the back gives in under the bust by at most this', commonPractice],
  sideGives: [6, 'mm', 'and each edge of the side seam by at most this', commonPractice],
  bladeShare: [
    0.25,
    'share',
    'the back princess seam begins to take in above the bust level, for the shoulder blade: there it takes this share of what it takes at the waist',
    commonPractice,
  ],
  backPrincess: [
    0.45,
    'share',
    'the back princess line crosses the bust level at this share of the back width',
    commonPractice,
  ],
  backPrincessLean: [
    0.02,
    'share',
    'and comes this share of the back width nearer to the centre at the waist',
    commonPractice,
  ],
  centreFrontPart: [
    0.33,
    'share',
    'of the front princess intake, the centre front panel gives this',
    commonPractice,
  ],
  frontHang: [
    frontHang,
    'mm',
    'the front armhole hangs this much shorter than the back, as the shoulder leans forward',
    commonPractice,
  ],
  leastBustDart: [leastBustDart, 'degrees', 'a smaller bust dart is no dart', commonPractice],
  greatestBustDart: [
    greatestBustDart,
    'degrees',
    'a larger bust dart does not lie flat in one seam',
    commonPractice,
  ],
  leastMidriff: [25, 'mm', 'cloth left between the under-bust seam and the waist', commonPractice],
  leastCentreFront: [25, 'mm', 'a narrower centre front panel cannot carry an insert', commonPractice],
  breastLeast: [
    32,
    'mm',
    'the front under-bust seam lies this far below the bust level, so that the princess edge reaches down the breast to its lower edge',
    onForms,
  ],
  breastPerCup: [0.3, 'share', 'and lower by this share of the cup difference', onForms],
  breastLowest: [
    0.63,
    'share',
    'a breast reaches no lower than this share of the way from bust point to waist',
    commonPractice,
  ],
  breastFull: [210, 'mm', 'a breast of a cup difference over this hangs fuller', onForms],
  breastFullShare: [
    0.2,
    'share',
    'and the seam lies lower by this share of what it is over that, more',
    onForms,
  ],
  armholeHeld: [
    6,
    'degrees',
    'on straps without sleeves nothing holds the front armhole, where the ease of the bust gathers: so much of it is folded out towards the bust point, and taken up by the princess seam',
    onWorn,
  ],
  armholeOverfull: [
    155,
    'mm',
    'the less, the further the bust stands out before the upper chest, for its dart is large already; nothing where its girth is larger by this',
    onWorn,
  ],
});

/** The numbers of the neck, which missing measurements are estimated by too. */
export const neckRules = ruleTable('N', neckNumbers);
