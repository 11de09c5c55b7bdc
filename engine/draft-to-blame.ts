import { middleBody } from './body/grid.ts';
import { readBody } from './body/read.ts';
import { onlyWhether } from './constraints/only-whether.ts';
import { bothSides } from './excluded-words.ts';
import type { Issue } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import { resolveStyling } from './pattern/styling-values.ts';

/**
 * The issues of a draft whose lines cannot all hold, its own fault where it is that: where it cannot be drawn for a woman
 * of middle size either, with the usual choices, no measurement should be taken again. Draws once more at the most.
 */
export function draftToBlame(draft: Draft, issues: readonly Issue[]): readonly Issue[] {
  if (!issues.some(isDisagreement) || drawsForTheMiddle(draft)) return issues;
  return issues.map((issue) => {
    if (!isDisagreement(issue) || !issue.relations) return issue;
    return {
      ...issue,
      code: 'draft-cannot-agree',
      message: `This draft cannot be drafted for a woman of middle size either: ${bothSides(issue.relations)}. No measurement is to blame: the draft has to be mended.`,
    };
  });
}

const isDisagreement = ({ code }: Issue): boolean => code === 'cannot-agree';

function drawsForTheMiddle(draft: Draft): boolean {
  const [body, styling] = [readBody(middleBody), resolveStyling(draft.choices, {})];
  return !body.ok || !styling.ok || draft.draw(body.value, styling.value, onlyWhether).ok;
}
