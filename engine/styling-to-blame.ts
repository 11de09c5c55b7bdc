import type { Body } from './body/body.ts';
import { listed } from './checks/words.ts';
import { onlyWhether } from './constraints/only-whether.ts';
import type { Issue } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import type { Choice, Styling } from './pattern/styling.ts';

/** What a draft says when its lines cannot all hold: it may be the body, or what was asked for. */
const unsolved = ['cannot-agree', 'measurements-contradict'];

/**
 * Which choices stand in the way of a garment that could be drafted for this body with the usual ones; nothing where
 * it is the measurements, or where the draft has already named the choice. Tries the usual value for one choice
 * after the other, and for all together.
 */
export function stylingToBlame(
  draft: Draft,
  body: Body,
  styling: Styling,
  issues: readonly Issue[],
): Issue | undefined {
  if (!issues.some(({ code }) => unsolved.includes(code))) return undefined;
  const changed = draft.choices.filter((choice) => styling[choice.name] !== choice.default);
  const draws = (choices: readonly Choice[]): boolean =>
    draft.draw(body, { ...styling, ...usual(choices) }, onlyWhether).ok;
  if (changed.length === 0 || !draws(changed)) return undefined;
  const alone = changed.filter((choice) => draws([choice]));
  const named = (alone.length > 0 ? alone : changed).map(
    (choice) => `${choice.name} ${choice.default} instead of ${short(styling[choice.name])}`,
  );
  const would = alone.length > 0 ? named.join(', or ') : `${listed(named)}, all together`;
  return {
    code: 'styling-cannot-agree',
    severity: 'error',
    path: (alone[0] ?? changed[0])?.name ?? 'styling',
    message: `These measurements can be drafted, but not with these choices. This would do: ${would}. Something between may do as well.`,
  };
}

const usual = (choices: readonly Choice[]): Styling =>
  Object.fromEntries(choices.map((choice) => [choice.name, choice.default]));

const short = (value: number | string | undefined): string =>
  typeof value === 'number' ? String(Number(value.toFixed(2))) : `${value}`;
