import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the style lines of a bodice, each with its reason and source. */
export const bodiceRules = ruleTable('B', {
  backStrapLean: [
    0.15,
    'share',
    'down the back, the strap runs out to the side by this share of its height',
    commonPractice,
  ],
  strapInsideUnderarm: [
    60,
    'mm',
    'the strap meets the back at least this far inside the underarm, or it moves nearer to the neck',
    commonPractice,
  ],
  strapBeyondFold: [
    0.5,
    'share',
    'below the fold of the arm, where the armhole already turns out, a strap may end further out by this share of the way down',
    commonPractice,
  ],
  strapBeyondFoldLimit: [15, 'mm', 'but by no more than this', commonPractice],
  aboveUnderarm: [
    25,
    'mm',
    'the front neckline lies at least this much higher than the underarm, or the strap would hang on a shelf',
    commonPractice,
  ],
  strapFalls: [
    15,
    'mm',
    'behind, the neckline lies at least this much lower than the armhole at the shoulder, or nothing would be left of a strap',
    commonPractice,
  ],
  backNecklineRise: [12, 'mm', 'the back neckline rises this much from centre to strap', commonPractice],
  backNecklinePoint: [
    0.45,
    'share',
    'a pointed back neckline rises by this share of its depth from the point to the strap',
    commonPractice,
  ],
  roundScoop: [
    0.35,
    'share',
    'a round neckline lies lower at the centre than at its sides by this share of its half width',
    commonPractice,
  ],
  pointedDrop: [
    0.6,
    'share',
    'a pointed neckline lies lower at the centre than at its sides by this share of its half width',
    commonPractice,
  ],
  sweetheartDrop: [
    0.3,
    'share',
    'a sweetheart neckline dips at the centre by this share of its half width',
    commonPractice,
  ],
  aboveBust: [25, 'mm', 'no neckline comes nearer to the bust level than this', commonPractice],
  besidePrincess: [
    15,
    'mm',
    'the corner of a neckline stays at least this far from a princess line that runs on to the shoulder',
    commonPractice,
  ],
  princessSlant: [
    22,
    'degrees',
    'a princess line that begins at the neckline of a plain front leans out from the bust point by no more than this',
    commonPractice,
  ],
  armholeInset: [
    0.5,
    'share',
    'an armhole that begins inside the shoulder point lies inside the arm folds by this share of that',
    commonPractice,
  ],
  puffNotch: [
    0.4,
    'share',
    'the armhole is sewn flat up to this share of its height, and a puff gathered beyond',
    'a third to half, common practice, no source',
  ],
  plainNotch: [
    0.28,
    'share',
    'the armhole is sewn flat up to this share of its height, and a plain sleeve eased in beyond',
    'a quarter to a third, common practice, no source',
  ],
  notchClear: [8, 'mm', 'a notch so near to a seam that crosses the armhole moves onto it', commonPractice],
  leastRadius: [
    26,
    'mm',
    'no armhole or cap bends tighter than this, so that it can be sewn and its allowance turned',
    commonPractice,
  ],
  leanAtWaist: [6.5, 'degrees', 'a princess edge leans no further where it meets the waist', commonPractice],
  princessRadius: [
    25,
    'mm',
    'a front princess edge bends no tighter, or it could not be sewn to its neighbour',
    commonPractice,
  ],
  princessClimbs: [
    10,
    'degrees',
    'under the bust a front princess edge climbs at least this much: a flatter one could not be sewn to its neighbour',
    commonPractice,
  ],
  waistStrays: [
    10,
    'mm',
    'the waist of the front lies no further off its level at the princess seam',
    commonPractice,
  ],
  leavesArmhole: [
    60,
    'degrees',
    'a princess seam leaves the armhole by this angle, and curves down from there',
    commonPractice,
  ],
  bladeStraightness: [
    5,
    'ratio',
    'above the bust level the back princess edges are kept this much straighter than below',
    commonPractice,
  ],
  leastStrap: [
    30,
    'mm',
    'a fitting leaves at least this of a strap before and behind the shoulder',
    commonPractice,
  ],
  steepestShoulder: [50, 'degrees', 'a fitting makes no shoulder slope more than this', commonPractice],
  chestStraightness: [
    5,
    'ratio',
    'above the bust level an edge sewn to a gathered insert is kept this much straighter than below: its bend belongs over the bust',
    commonPractice,
  ],
  sweetheartRises: [63, 'degrees', 'a sweetheart neckline rises from its point by this', commonPractice],
  sweetheartFalls: [20, 'degrees', 'and falls to its corner by this', commonPractice],
  turnsWithin: [
    0.3,
    'share',
    'the side of a neckline, or the inner edge of a strap, leaves the shoulder square within this share of its length',
    commonPractice,
  ],
  breastStraightness: [
    12,
    'ratio',
    'from bust to under-bust the princess edges of a plain front are kept this much straighter than below: a breast is round, and its hollow lies under it',
    commonPractice,
  ],
  princessAside: [
    14,
    'degrees',
    'the edge of a plain centre front leaves its neckline no further aside from the way to the bust, or a facing laid together there would lie across its fold',
    commonPractice,
  ],
  necklineDepth: [
    0.64,
    'share',
    'the front neckline lies this share of the way down from side neck to bust point',
    commonPractice,
  ],
  deepestNeckline: [
    0.75,
    'share',
    'on straps without sleeves it is asked for as low as this, and lies where the underarm lets it',
    commonPractice,
  ],
  strapGives: [
    0.03,
    'share',
    'without sleeves the front armhole is held in, and the strap is longer than its way over the shoulder by this share ...',
    'judged on eight worn bodices',
  ],
  strapGivesFrom: [
    600,
    'mm',
    '... of what the upper chest girth is over this, or it would draw the back up',
    'judged on eight worn bodices',
  ],
  waistSlants: [
    45,
    'degrees',
    'the waist of a side panel meets its princess seam no further off level: steeper it would fold back on the seam',
    commonPractice,
  ],
});

/** The tightest a hollow edge with this allowance (mm) may bend, mm: an allowance wider than the bend cannot be cut. */
export const turnable = (allowance: number): number => allowance + 1;

/** The same for an armhole or a cap, which is also sewn to a sleeve. */
export const leastRadius = (allowance: number): number =>
  Math.max(bodiceRules.leastRadius.value, turnable(allowance));
