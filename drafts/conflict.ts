import type { Body, MeasurementName } from '../engine/body/body.ts';
import { measurementWords } from '../engine/body/measurement-words.ts';
import type { Attempt } from '../engine/constraints/attempts.ts';
import { REFUSAL_STEPS, smallestConflict } from '../engine/constraints/conflict.ts';
import { type ChangedDemands, changedDemands } from '../engine/constraints/demands.ts';
import { missesAt } from '../engine/constraints/misses-at.ts';
import type { Residual } from '../engine/constraints/solution.ts';
import {
  type ExcludedRelation,
  type FoundFrom,
  inTolerances,
  limitsOf,
} from '../engine/excluded-relation.ts';
import { bothSides } from '../engine/excluded-words.ts';
import type { Issue } from '../engine/issue.ts';
import type { DraftingTable } from '../engine/pattern/drafting-table.ts';
import type { Choice } from '../engine/pattern/styling.ts';
import { type ChosenWord, chosenWords, NUDGE, type SketchOf, type Suspect, suspectsOf } from './suspects.ts';

/** So many measurements, and so many choices, are named to be looked at again. */
const NAMED = 3;

/**
 * Where no suspect moved by a thousand times itself would take the misses away, none has a part in them: the draft asks
 * for what excludes itself.
 */
const NO_PART = 1e-3;

/**
 * What cannot agree, as a dressmaker can use it: what is asked that excludes each other, in the draft's words, whose each
 * of it is, by how much it misses, and the measurements and choices that would help, each with the way it would have to
 * move. These are found by how the misses change, where the draft has come to rest, with each; `sketchOf` plans the draft
 * once more, and `drawn` are lengths it takes from what was drawn before. A solution without residuals was asked only
 * whether it can be had, and no reasons are looked for.
 *
 * `cannot-agree`, or `draft-cannot-agree` where no measurement and no choice has a part in it.
 */
export function conflictIssue<Choices extends readonly Choice[]>(
  table: DraftingTable<Choices>,
  attempt: Attempt,
  sketchOf: SketchOf<Choices>,
  drawn: readonly Suspect[] = [],
): Issue {
  const { solution } = attempt;
  if (solution.residuals.length === 0) return unexplained;
  const pulls = [...suspectsOf(table, sketchOf), ...drawn].flatMap((suspect) => pullOf(suspect, attempt));
  const relations = excluded(attempt, pulls, chosenWords(table, sketchOf));
  const [worst] = relations;
  if (!worst) return unexplained;
  const found = {
    severity: 'error',
    path: worst.name,
    value: worst.value,
    limits: worst.limits,
    relations,
  } as const;
  if (solution.status === 'conflict' && pulls.every(({ share }) => share > 1 / NO_PART))
    return { ...found, code: 'draft-cannot-agree', message: draftsOwn(relations) };
  const helpful = pulls.filter(({ share }) => share < 1).toSorted((a, b) => a.share - b.share);
  const named = (kind: FoundFrom['kind']): readonly Pull[] =>
    helpful.filter(({ from }) => from.kind === kind).slice(0, NAMED);
  const advice = [
    said(
      'Measure again',
      named('measurement').map((pull) => measurementAdvice(pull, table.body)),
    ),
    said(
      'Choose otherwise',
      named('choice').map(({ from, larger }) => `${from.name} (${way(larger)})`),
    ),
  ].join('');
  const lookAgain = advice === '' ? ' No single measurement explains it; look at the styling too.' : advice;
  return {
    ...found,
    code: 'cannot-agree',
    message: `These measurements cannot be drafted together: ${bothSides(relations)}.${lookAgain}`,
  };
}

/** What a draft says of itself where nobody's measurements and nobody's choices are at fault. */
const draftsOwn = (relations: readonly ExcludedRelation[]): string =>
  `This draft contradicts itself: ${bothSides(relations)}, whoever it is drafted for. No measurement and no choice is to blame: the draft has to be mended.`;

const unexplained: Issue = {
  code: 'cannot-agree',
  severity: 'error',
  path: '',
  message: 'These measurements cannot be drafted together.',
};

/** What a suspect has to do with a conflict. */
interface Pull {
  readonly from: FoundFrom;
  /** The share of itself, or of the range of a choice, that it would have to move for nothing to miss any more. */
  readonly share: number;
  /** Whether it would have to be larger. */
  readonly larger: boolean;
  readonly changes: ChangedDemands;
}

function pullOf({ from, way: nudged, sketch }: Suspect, attempt: Attempt): readonly Pull[] {
  const other = sketch();
  if (!other) return [];
  const misses = missesAt(other, attempt.solution);
  const before = attempt.solution.residuals.map(asMiss);
  const slope = (slopeOf(before, misses.map(asMiss)) / NUDGE) * nudged;
  // What misses grows with the square of the move, so the sum is nothing at twice the distance its slope points to.
  const share = slope === 0 ? Infinity : (2 * totalMiss(before)) / Math.abs(slope);
  return [{ from, share, larger: slope < 0, changes: changedDemands(attempt, other, misses) }];
}

/** A smallest set that cannot hold together, what misses most first; the worst alone where none smaller was found. */
function excluded(
  attempt: Attempt,
  pulls: readonly Pull[],
  chosen: readonly ChosenWord[],
): readonly ExcludedRelation[] {
  const { sketch, solution } = attempt;
  const sorted = solution.residuals.map(asMiss).toSorted((a, b) => inTolerances(b) - inTolerances(a));
  const names = new Set(smallestConflict(sketch, solution, REFUSAL_STEPS));
  const members = names.size > 0 ? sorted.filter(({ name }) => names.has(name)) : sorted.slice(0, 1);
  const otherwise = chosen.flatMap(({ from, isUsual, sketch: planned }) => {
    const other = planned();
    return other ? [{ from, isUsual, changes: changedDemands(attempt, other) }] : [];
  });
  // A word that is as usual is behind half of a draft: it is named only where there is nothing else to name.
  const wordsBehind = (name: string, explained: boolean): readonly FoundFrom[] =>
    otherwise
      .filter(({ isUsual, changes }) => changes.has(name) && !(isUsual && explained))
      .map(({ from }) => from);
  return members.map(({ name, value, unit }) => {
    const from = pulls
      .flatMap(({ from: suspect, changes }) => {
        const by = changes.get(name);
        return by === undefined ? [] : [{ suspect, by }];
      })
      .toSorted((a, b) => b.by - a.by)
      .map(({ suspect }) => suspect);
    const words = wordsBehind(name, from.length > 0);
    return {
      name,
      value,
      unit,
      limits: limitsOf(unit),
      whose: [...from, ...words][0]?.kind ?? 'draft',
      from: [...from, ...words],
    };
  });
}

function measurementAdvice({ from, larger }: Pull, { known }: Body): string {
  const name = from.name as MeasurementName;
  const estimated = ['measured', 'reconciled'].includes(known[name].from) ? '' : ', so far only estimated';
  return `${measurementWords(name)} (${way(larger)}${estimated})`;
}

const way = (larger: boolean): string => `${larger ? 'larger' : 'smaller'} would help`;

const said = (what: string, names: readonly string[]): string =>
  names.length === 0 ? '' : ` ${what}: ${names.join(', ')}.`;

const asMiss = ({ relation, error, unit }: Residual) => ({ name: relation, value: error, unit });

type Miss = ReturnType<typeof asMiss>;

/** The sum of the squares of all misses. */
const totalMiss = (misses: readonly Miss[]): number =>
  misses.reduce((sum, miss) => sum + inTolerances(miss) ** 2, 0);

/** How that sum begins to change from some misses to others of the same relations. */
function slopeOf(misses: readonly Miss[], others: readonly Miss[]): number {
  const there = new Map(others.map((miss) => [miss.name, miss]));
  return misses.reduce((sum, miss) => {
    const change = (there.get(miss.name)?.value ?? miss.value) - miss.value;
    return sum + (2 * miss.value * change) / limitsOf(miss.unit).max ** 2;
  }, 0);
}
