import { type Combination, expectation } from './conditional.ts';
import { type Essential, estimated, type FoundSize, type FoundSizes } from './found.ts';
import { type AskedSurvey, overElbow, relaxedArm, surveyKnowledge } from './survey-knowledge.ts';

/** The part of a body that the survey tells about directly. */
interface Frame {
  readonly neckBaseGirth: FoundSize;
  readonly shoulderLength: FoundSize;
  readonly acrossBackWidth: FoundSize;
  readonly upperArmGirth: FoundSize;
  readonly wristGirth: FoundSize;
  readonly outerArmLength: FoundSize;
}

/**
 * Back width between the folds of the arms for one of the survey's, which goes on over the flesh: a textbook's
 * back widths (34.4 cm at a bust of 88, from memory) by the survey's for such a bust.
 */
export const betweenFolds = 0.96;

/** The frame, what of it is not given from stature and the girths: conditional means of the survey. */
export function estimateFrame(given: FoundSizes, { expect, basis }: AskedSurvey): Frame {
  const estimate = (combination: Combination, remark = ''): FoundSize => {
    const { mean, spread } = expect(combination);
    return estimated(mean, `${basis}${remark}`, spread);
  };
  return {
    neckBaseGirth: given.neckBaseGirth ?? estimate([['neckBaseGirth', 1]]),
    shoulderLength: given.shoulderLength ?? estimate([['shoulderLength', 1]]),
    acrossBackWidth:
      given.acrossBackWidth ??
      estimate([['acrossBackWidth', betweenFolds]], '; between the folds (from memory)'),
    upperArmGirth:
      given.upperArmGirth ??
      estimate([['upperArmGirthFlexed', relaxedArm]], '; flexed arm less 3 % (from memory)'),
    wristGirth: given.wristGirth ?? estimate([['wristGirth', 1]]),
    outerArmLength:
      given.outerArmLength ??
      estimate(
        [['outerArmLengthStraight', overElbow]],
        '; straight arm and 6 % over the bent elbow (from memory)',
      ),
  };
}

/**
 * Mean back lengths to the natural waist (NATICK/TR-89/044, 1988) and to the navel (the survey), mm. Nobody knows
 * to which of the two a body's was taken, so it is moved half-way, and that half is its noise.
 */
const [toNaturalWaist, toNavel] = [367.3, 425.4];
export const halfWay = (toNavel - toNaturalWaist) / 2;

/** Stature, where it was not measured: from the girths and the back length. */
export function estimateStature(given: FoundSizes & Essential): FoundSize {
  const { known, basis } = surveyKnowledge(given);
  const backLength = { value: given.backNeckPointToWaist.value + halfWay, noise: halfWay };
  const expect = expectation(new Map(known).set('backNeckPointToWaistAtNavel', backLength));
  const { mean, spread } = expect([['stature', 1]]);
  return estimated(mean, `${basis}; and from back neck point to waist`, spread);
}
