import type { Body } from '../body/body.ts';
import { type Expected, expectation } from '../body/conditional.ts';
import { overBack } from '../body/estimate-lengths.ts';
import type { FoundSizes } from '../body/found.ts';
import { surveyKnowledge } from '../body/survey-knowledge.ts';

/** Mean waist girth at its natural level as a share of that at the navel: NATICK/TR-89/044, 1988. */
const naturalWaist = 725.5 / 791.9;

/** How far a waist at the navel may lie from that share of the natural one, mm; judgement. */
const waistNoise = 35;

/** What the survey expects of a body whose measurements it knows, mm. */
export interface LikelyShape {
  readonly bustBreadth: Expected;
  readonly bustDepth: Expected;
  readonly waistBreadth: Expected;
  readonly waistDepth: Expected;
  readonly hipBreadth: Expected;
  readonly hipDepth: Expected;
  readonly frontNeckBelow: Expected;
  readonly crotchHeight: Expected;
  readonly backNeckPointHeight: number;
}

/**
 * Breadths, depths and heights of the sections: conditional means of the survey. Those of the waist, which it took at the
 * navel, are brought up to the natural waist by the share that the girths have of each other.
 */
export function likelyShape({ size, known }: Pick<Body, 'size' | 'known'>): LikelyShape {
  const names = ['stature', 'bustGirth', 'hipGirth', 'upperArmGirth', 'neckBaseGirth'] as const;
  const sizes: FoundSizes = Object.fromEntries(
    names.map((name) => [name, { value: size[name], known: known[name] }]),
  );
  const asked = new Map(surveyKnowledge(sizes).known).set('waistGirthAtNavel', {
    value: size.waistGirth / naturalWaist,
    noise: waistNoise,
  });
  const expect = expectation(asked);
  return {
    bustBreadth: expect([['bustBreadth', 1]]),
    bustDepth: expect([['bustDepth', 1]]),
    waistBreadth: expect([['waistBreadthAtNavel', naturalWaist]]),
    waistDepth: expect([['waistDepthAtNavel', naturalWaist]]),
    hipBreadth: expect([['hipBreadth', 1]]),
    hipDepth: expect([['hipDepth', 1]]),
    frontNeckBelow: expect([
      ['backNeckPointHeight', 1],
      ['frontNeckPointHeight', -1],
    ]),
    crotchHeight: expect([['crotchHeight', 1]]),
    backNeckPointHeight: size.waistHeight + size.backNeckPointToWaist / overBack,
  };
}
