import { ruleTable } from '../../engine/pattern/rule.ts';
import { commonPractice } from '../../engine/sources.ts';

/** The numbers of the skirt draft, each with its reason and source. */
export const skirtRules = ruleTable('K', {
  sideRise: [
    0.05,
    'share',
    'the waist rises to the side by this share of hip less waist, for the seam runs over the curve of the hip',
    commonPractice,
  ],
  leastRise: [4, 'mm', 'and by no less than this', commonPractice],
  mostRise: [20, 'mm', 'nor more than this', commonPractice],
  princessRise: [0.4, 'share', 'at the princess seams it has risen by this share of that', commonPractice],
  kneeHeight: [
    0.265,
    'share',
    'the hem of a knee-length skirt hangs this share of the stature above the floor',
    'knee at a quarter of the stature: Extension Circular 306, 1943; the hem covers its upper edge',
  ],
  calfHeight: [0.19, 'share', 'a calf-length one this', commonPractice],
  ankleHeight: [0.065, 'share', 'an ankle-length one this', commonPractice],
  sideBalance: [
    10,
    'mm',
    'half the front is this much wider than half the back, at the hip as at a waist drafted alone, and the side seam hangs straight between them',
    commonPractice,
  ],
  centreGoreWaist: [
    0.42,
    'share',
    'a skirt drafted alone has this share of the waist of its front half in the centre front gore, and of its back half in the centre back',
    'about the shares of the bodice panels above',
  ],
  centreFrontHip: [
    0.26,
    'share',
    'of what the front half grows from waist to hip, the centre front gore takes this',
    commonPractice,
  ],
  sideFrontHip: [0.74, 'share', 'the side front gore this, half on each edge: together one', commonPractice],
  sideBackHip: [
    0.7,
    'share',
    'of what the back half grows, the side back gore takes this, half on each edge',
    commonPractice,
  ],
  centreBackHip: [0.3, 'share', 'the centre back gore this: together one', commonPractice],
  seamStraightness: [
    20,
    'ratio',
    'from waist to hip the seams are kept this much straighter than the waist itself, which takes the curve',
    commonPractice,
  ],
  leastBelowHip: [80, 'mm', 'a gore runs straight for at least this far below the hip level', commonPractice],
  mostLean: [
    30,
    'degrees',
    'below the hip a gore seam leans out by no more than this: twelve such edges make a whole circle',
    'a circle skirt has no hip to shape',
  ],
  leastLean: [-2, 'degrees', 'nor in by more than this, or one cannot walk in it', commonPractice],
  liningShorter: [25, 'mm', 'a lining hangs shorter than its skirt by this', commonPractice],
  liningHem: [
    20,
    'mm',
    'its hem is turned twice by half of this, whatever hem the skirt has',
    commonPractice,
  ],
  flareTurn: [
    20,
    'mm',
    'gore seams turn into the flare over the last of this above the hip: coming in by its lean from further down they leave less room there than a body takes, which is rounder than a straight line from waist to hip',
    'fitted on eight worn skirts',
  ],
  straightEase: [60, 'mm', 'a skirt that does not flare has this much ease at the hip', 'from memory'],
  flareEase: [
    80,
    'mm',
    'for each time that the hem is wider it has this much more, 8 mm for a tenth: flared it comes in above the hip as steeply as it goes out below, and where it is caught there the waist rides up',
    'fitted on eight worn dresses',
  ],
});
