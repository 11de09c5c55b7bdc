import { listed } from '../text/listed.ts';
import type { MeasurementName } from './body.ts';
import {
  type Combination,
  type Expected,
  expectation,
  type KnownDimension,
  type KnownDimensions,
} from './conditional.ts';
import type { FoundSizes } from './found.ts';
import { measurementWords } from './measurement-words.ts';
import { type SurveyDimension, surveyName } from './survey.ts';

/**
 * Girth of the relaxed upper arm for one of the arm flexed. The survey flexed it; no publication with both was
 * read, so this is from memory. In 1988 the relaxed arm, at the armpit where it is thickest, was 29.16 cm and
 * the flexed one 28.13 cm (NATICK/TR-89/044), which sets no closer bound.
 */
export const relaxedArm = 0.97;

/**
 * Length of the arm over its bent elbow for one of the straight arm, which the survey took: a textbook's 59.5 cm at
 * a stature of 168 (from memory) by the survey's 56.2 cm.
 */
export const overElbow = 1.06;

/**
 * Which measurements the survey took too. Its waist is not among them: it lies at the navel, a dressmaker's
 * wherever she tied the tape. Nor is its back width, taken over the flesh at another height than here.
 */
const shared = [
  ['stature', 'stature', 1],
  ['bustGirth', 'bustGirth', 1],
  ['hipGirth', 'hipGirth', 1],
  ['neckBaseGirth', 'neckBaseGirth', 1],
  ['shoulderLength', 'shoulderLength', 1],
  ['upperArmGirth', 'upperArmGirthFlexed', relaxedArm],
  ['wristGirth', 'wristGirth', 1],
  ['outerArmLength', 'outerArmLengthStraight', overElbow],
] as const satisfies readonly (readonly [MeasurementName, SurveyDimension, number])[];

/** What of a body the survey can be asked by, and how that is put in words. */
export function surveyKnowledge(found: FoundSizes): {
  readonly known: KnownDimensions;
  readonly basis: string;
} {
  const known = new Map<SurveyDimension, KnownDimension>();
  const words: string[] = [];
  for (const [name, dimension, ratio] of shared) {
    const size = found[name];
    if (!size) continue;
    const spread = size.known.from === 'estimated' ? { spread: size.known.spread } : {};
    known.set(dimension, { value: size.value / ratio, ...spread });
    words.push(`${size.known.from === 'estimated' ? 'estimated ' : ''}${measurementWords(name)}`);
  }
  return { known, basis: `from ${listed(words)}: ${surveyName}` };
}

/** The survey asked about one woman: what it expects of her, and how what it was asked by is put in words. */
export interface AskedSurvey {
  readonly expect: (combination: Combination) => Expected;
  readonly basis: string;
}

/** Asks the survey by all that it took too. */
export function surveyAsked(found: FoundSizes): AskedSurvey {
  const { known, basis } = surveyKnowledge(found);
  return { expect: expectation(known), basis };
}
