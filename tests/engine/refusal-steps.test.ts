import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { onlyTrue } from '../../engine/only-true.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { shippedBody } from '../drafts/drafted.ts';

const trial = garments.find(({ name }) => name === 'trial') as Draft;

/** How many times a trial garment is drawn until it is refused, and by what. */
function drafts(body: string, styling: object): readonly [string | undefined, number] {
  let drawn = 0;
  const counted: Draft = {
    ...trial,
    draw: (...given) => {
      drawn += 1;
      return trial.draw(...given);
    },
  };
  const made = evaluate(counted, shippedBody(body), styling);
  const { issues } = made.ok ? onlyTrue(counted, made.value) : made;
  return [issues.find(({ severity }) => severity === 'error')?.code, drawn];
}

// Each of these cost five to eight drafts while fewer choices were looked for to the end.
describe('a refusal of which the lines take long to find', () => {
  it('tries fewer choices only until so many steps were taken, where lines do not agree', () => {
    const stuck = {
      bustEase: 136.43,
      underBustDrop: 42.87,
      sleeve: 'plain',
      sleeveHemAllowance: 30.27,
      notchType: 'slit',
    };
    expect(drafts('scene-painter', stuck)).toEqual(['styling-cannot-agree', 3]);
  });

  it('tries the usual choices alone, where a check fails', () => {
    const slow = {
      bustEase: 12.91,
      underBustEase: 90.7,
      waistEase: 9.07,
      underBustDrop: 92.84,
      princessOffset: 7.92,
      sleeve: 'plain',
      upperArmEase: 104.24,
      sleeveLength: 263.92,
      sleeveTo: 'elbow',
      capEase: 45.69,
    };
    expect(drafts('understudy', slow)).toEqual(['draft-not-true', 2]);
  });
});
