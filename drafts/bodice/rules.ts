import { frontHang } from '../../engine/body/bust.ts';
import { commonPractice, ruleTable } from '../../engine/pattern/rule.ts';

/** The numbers of the bodice draft, each with its reason and source. */
export const bodiceRules = ruleTable('B', {
  underarmDrop: [
    15,
    'mm',
    'the underarm of a bodice with sleeves lies this far below the scye depth',
    commonPractice,
  ],
  underarmAboveBust: [
    8,
    'mm',
    'the underarm stays at least this far above the bust level, so that the level can be measured',
    'so that the bust girth can be checked across the pieces',
  ],
  underBustShare: [
    0.42,
    'share',
    'the under-bust seam lies at this share of the way from bust point to waist',
    commonPractice,
  ],
  underBustLimit: [95, 'mm', 'the under-bust seam lies no further below the bust point', commonPractice],
  leastMidriff: [25, 'mm', 'cloth left between the under-bust seam and the waist', commonPractice],
  leastCentreFront: [25, 'mm', 'a narrower centre front panel cannot carry the insert', commonPractice],
  cupInBoth: [
    100,
    'mm',
    'cup difference up to here is shared by front and back; the back does not know the rest',
    'EN 13402: the smallest named cup begins at 10 cm',
  ],
  frontNeckNarrower: [2, 'mm', 'the front neck is narrower than the back neck by this', 'from memory'],
  shoulderTilt: [
    2,
    'degrees',
    'the front shoulder slopes this much more, the back this much less than the body',
    'Bunka draft, 22 and 18 degrees about 20; from memory',
  ],
  frontHang: [
    frontHang,
    'mm',
    'the front armhole hangs this much shorter than the back, as the shoulder leans forward',
    commonPractice,
  ],
  leastBustDart: [2, 'degrees', 'a smaller bust dart is no dart', commonPractice],
  greatestBustDart: [50, 'degrees', 'a larger bust dart does not lie flat in one seam', commonPractice],
  sideShare: [
    0.27,
    'share',
    'part of the waist suppression taken at the side seam, half on each edge',
    'Bunka draft shares, regrouped for four seams; from memory',
  ],
  centreBackShare: [
    0.1,
    'share',
    'part of the waist suppression taken at the centre back seam',
    'Bunka draft shares, regrouped for four seams; from memory',
  ],
  centreBackLimit: [20, 'mm', 'the centre back seam takes no more than this', commonPractice],
  frontShareAtUnderBust: [
    0.6,
    'share',
    'of what both princess seams take under the bust, the front takes this: the bust is in front',
    commonPractice,
  ],
  frontShareAtWaist: [
    0.53,
    'share',
    'of what both princess seams take at the waist, the front takes this',
    commonPractice,
  ],
  bladeShare: [
    0.25,
    'share',
    'the back princess seam begins to take in above the bust level, for the shoulder blade: there it takes this share',
    commonPractice,
  ],
  bladeStraightness: [
    5,
    'ratio',
    'above the bust level the back princess edges are kept this much straighter than below',
    commonPractice,
  ],
  centreFrontPart: [
    0.45,
    'share',
    'of the front princess intake, the centre front panel gives this',
    commonPractice,
  ],
  backPrincess: [
    0.45,
    'share',
    'the back princess line crosses the bust level at this share of the back width',
    commonPractice,
  ],
  backPrincessLean: [
    0.07,
    'share',
    'and comes this share of the back width nearer to the centre at the waist',
    commonPractice,
  ],
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
  backNecklineRise: [12, 'mm', 'the back neckline rises this much from centre to strap', commonPractice],
  backNecklinePoint: [
    0.45,
    'share',
    'a pointed back neckline rises by this share of its depth from the point to the strap',
    commonPractice,
  ],
  armholeRoom: [
    50,
    'mm',
    'the strap end of the side front stays at least this far above the underarm, for the armhole to hollow out',
    commonPractice,
  ],
  frontNotch: [
    0.75,
    'share',
    'the front armhole is sewn flat from the underarm to this share, and gathered beyond',
    commonPractice,
  ],
  backNotch: [0.6, 'share', 'the same for the back armhole', commonPractice],
  leastRadius: [
    13,
    'mm',
    'no armhole bends tighter than this, so that its allowance can be turned',
    commonPractice,
  ],
  leastStrap: [
    30,
    'mm',
    'a fitting leaves at least this of a strap before and behind the shoulder',
    commonPractice,
  ],
  strapInsideFrontUnderarm: [
    40,
    'mm',
    'the strap meets the front at least this far inside the underarm once the dart is closed, or the neckline is narrower',
    commonPractice,
  ],
});

/** The tightest an armhole with this allowance (mm) may bend, mm: an allowance wider than the bend cannot be cut. */
export const leastRadius = (allowance: number): number => Math.max(bodiceRules.leastRadius.value, allowance);
