import type { Body } from './body/body.ts';
import { chosenFrom } from './chosen-from.ts';
import { type Attempt, noted, stepsOf } from './constraints/attempts.ts';
import { REFUSAL_STEPS, smallestConflict } from './constraints/conflict.ts';
import { changedDemands } from './constraints/demands.ts';
import { type ExcludedRelation, inTolerances, limitsOf } from './excluded-relation.ts';
import { bothSides } from './excluded-words.ts';
import type { Issue } from './issue.ts';
import type { IssueCode } from './issue-codes/issue-codes.ts';
import type { Draft } from './pattern/draft.ts';
import type { Choice, Styling } from './pattern/styling.ts';
import { smallestThatHelps } from './smallest-that-helps.ts';
import { plainFigure } from './text/figure.ts';
import { listed } from './text/listed.ts';

/** What a draft says when its lines cannot all hold: it may be the body, or what was asked for. */
const unsolved: readonly IssueCode[] = ['cannot-agree', 'measurements-contradict'];

/** Drafts that may be tried in the search for the choices to blame, once it is known that they are. */
const ATTEMPTS = 2;

/**
 * No other draft is tried for fewer choices once the lines of those before took so many steps: what sticks takes some 220, and what
 * is near to it may take as many again, where a garment as usual takes 30.
 */
const MOST_STEPS = 250;

/**
 * All of it together, the first draft too, begins on nothing more once so many steps were taken as this many garments with the
 * usual choices take: what the drafts took is not left for finding what excludes each other. A step of what sticks costs a
 * sixth of a step of such a garment, which is cut and checked too.
 */
const USUAL_IN_ALL = 14;

/** Finding what excludes each other takes no more steps than so many garments with the usual choices: a draft and a half of a trial. */
const USUAL_FOR_REASONS = 9;

/**
 * Which choices stand in the way of a garment that could be drafted for this body with the usual ones; nothing where
 * it is the measurements, or where the draft has already named the choice. Tries the usual values for all choices, then
 * for ever fewer of them: one, where one alone is enough. `failed` are the sketches of the attempt that failed: what
 * excludes each other there is named, and what of it those choices make otherwise.
 */
export function stylingToBlame(
  draft: Draft,
  body: Body,
  styling: Styling,
  issues: readonly Issue[],
  failed: readonly Attempt[],
): Issue | undefined {
  if (!issues.some(isUnsolved)) return undefined;
  const changed = draft.choices.filter((choice) => styling[choice.name] !== choice.default);
  let helped: readonly Attempt[] = [];
  let steps = stepsOf(failed);
  const draws = (choices: readonly Choice[]): boolean => {
    const { solver, attempts } = noted();
    const { ok } = draft.draw(body, { ...styling, ...usualValues(choices) }, solver);
    steps += stepsOf(attempts);
    if (ok) helped = attempts;
    return ok;
  };
  if (changed.length === 0 || !draws(changed)) return undefined;
  const usual = stepsOf(helped);
  const blamed = smallestThatHelps(changed, (some) => steps <= MOST_STEPS && draws(some), ATTEMPTS);
  const named = usualInstead(blamed, styling);
  const left = Math.min(REFUSAL_STEPS, USUAL_FOR_REASONS * usual, USUAL_IN_ALL * usual - steps);
  const relations = excluded(failed, helped, blamed, styling, left);
  const why = relations.length > 0 ? ` With them ${bothSides(relations)}.` : '';
  const would = blamed.length === 1 ? named.join() : `${listed(named)}, all together`;
  return {
    code: 'styling-cannot-agree',
    severity: 'error',
    path: blamed[0]?.name ?? 'styling',
    message: `These measurements can be drafted, but not with these choices. This would do: ${would}. Something between, or another choice, may do as well.${why}`,
    ...(relations.length > 0 ? { relations } : {}),
  };
}

/**
 * A smallest set of what could not hold together in the first sketch that failed. Those that are otherwise in the same
 * sketch of a draft with the choices as usual are these choices'; whose the others are was not looked for.
 */
function excluded(
  failed: readonly Attempt[],
  helped: readonly Attempt[],
  choices: readonly Choice[],
  styling: Styling,
  mostSteps: number,
): readonly ExcludedRelation[] {
  const place = failed.findIndex(({ solution }) => solution.status !== 'solved');
  const [attempt, other] = [failed[place], helped[place]];
  if (!attempt || !other) return [];
  const names = smallestConflict(attempt.sketch, attempt.solution, mostSteps);
  const changed = changedDemands(attempt, other.sketch);
  return attempt.solution.residuals
    .filter(({ relation }) => names.includes(relation))
    .map(({ relation: name, error: value, unit }): ExcludedRelation => {
      const found = { name, value, unit, limits: limitsOf(unit) };
      if (!changed.has(name)) return { ...found, from: [] };
      return {
        ...found,
        whose: 'choice',
        from: choices.map((choice) => chosenFrom(choice, styling[choice.name])),
      };
    })
    .toSorted((a, b) => inTolerances(b) - inTolerances(a));
}

/** Whether an issue says that a draft's lines cannot all hold, whatever the reason. */
export const isUnsolved = ({ code }: Issue): boolean => unsolved.includes(code);

/** The usual values of choices. */
export const usualValues = (choices: readonly Choice[]): Styling =>
  Object.fromEntries(choices.map((choice) => [choice.name, choice.default]));

/** For each of these choices, in words, its usual value instead of the one that was chosen. */
export const usualInstead = (choices: readonly Choice[], styling: Styling): readonly string[] =>
  choices.map(
    (choice) =>
      `${choice.name} ${worded(choice, choice.default)} instead of ${worded(choice, styling[choice.name])}`,
  );

/** What was chosen, lengths with their unit. */
function worded(choice: Choice, value: number | string | undefined): string {
  if (typeof value !== 'number') return `${value}`;
  return `${plainFigure(value, 2)}${choice.kind !== 'word' && choice.unit === 'mm' ? ' mm' : ''}`;
}
