import type { Body } from './body/body.ts';
import { listed } from './checks/words.ts';
import { onlyWhether } from './constraints/only-whether.ts';
import type { Issue } from './issue.ts';
import type { IssueCode } from './issue-codes/issue-codes.ts';
import type { Draft } from './pattern/draft.ts';
import type { Choice, Styling } from './pattern/styling.ts';
import { smallestThatHelps } from './smallest-that-helps.ts';
import { plainFigure } from './text/length.ts';

/** What a draft says when its lines cannot all hold: it may be the body, or what was asked for. */
const unsolved: readonly IssueCode[] = ['cannot-agree', 'measurements-contradict'];

/** Drafts that may be tried in the search for the choices to blame, once it is known that they are. */
const ATTEMPTS = 3;

/**
 * Which choices stand in the way of a garment that could be drafted for this body with the usual ones; nothing where
 * it is the measurements, or where the draft has already named the choice. Tries the usual values for all choices, then
 * for ever fewer of them: one, where one alone is enough.
 */
export function stylingToBlame(
  draft: Draft,
  body: Body,
  styling: Styling,
  issues: readonly Issue[],
): Issue | undefined {
  if (!issues.some(isUnsolved)) return undefined;
  const changed = draft.choices.filter((choice) => styling[choice.name] !== choice.default);
  const draws = (choices: readonly Choice[]): boolean =>
    draft.draw(body, { ...styling, ...usual(choices) }, onlyWhether).ok;
  if (changed.length === 0 || !draws(changed)) return undefined;
  const blamed = smallestThatHelps(changed, draws, ATTEMPTS);
  const named = blamed.map(
    (choice) =>
      `${choice.name} ${worded(choice, choice.default)} instead of ${worded(choice, styling[choice.name])}`,
  );
  const would = blamed.length === 1 ? named.join() : `${listed(named)}, all together`;
  return {
    code: 'styling-cannot-agree',
    severity: 'error',
    path: blamed[0]?.name ?? 'styling',
    message: `These measurements can be drafted, but not with these choices. This would do: ${would}. Something between, or another choice, may do as well.`,
  };
}

/** Whether an issue says that a draft's lines cannot all hold, whatever the reason. */
export const isUnsolved = ({ code }: Issue): boolean => unsolved.includes(code);

const usual = (choices: readonly Choice[]): Styling =>
  Object.fromEntries(choices.map((choice) => [choice.name, choice.default]));

/** What was chosen, lengths with their unit. */
function worded(choice: Choice, value: number | string | undefined): string {
  if (typeof value !== 'number') return `${value}`;
  return `${plainFigure(value, 2)}${choice.kind !== 'word' && choice.unit === 'mm' ? ' mm' : ''}`;
}
