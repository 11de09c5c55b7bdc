import type { Issue, Result } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, tapeMarks, type Unit } from '../text/units.ts';
import { type Body, type MeasurementName, measurementNames, type Sizes } from './body.ts';
import { childNote, isChild } from './child.ts';
import { contradictions } from './contradictions.ts';
import { cupDifference, cupLetter } from './cup.ts';
import { completed } from './estimate.ts';
import {
  derived,
  type Essential,
  essentialNames,
  type FoundSize,
  type FoundSizes,
  measured,
  reconciledTo,
} from './found.ts';
import { type Mistake, recognisedMistakes } from './mistaken.ts';
import { digitsInDoubt, mixedUp, standingAmong } from './mixed-up/mixed-up.ts';
import type { Standing } from './mixed-up/standing.ts';
import { womenLike } from './population/women.ts';
import { unlikelyProportions } from './proportions.ts';
import { outOfRange, unitScale } from './ranges.ts';
import { readFitting } from './read-fitting.ts';
import { readNumbers, type WrittenNumbers } from './read-numbers.ts';
import { reconciled } from './reconcile/reconcile.ts';
import { movedIssues, reconcileOffered, sureOfTooMuch } from './reconcile/say-moved.ts';

/**
 * Reads one person's measurements as they came from a YAML or JSON file, checks them and completes them. Fails
 * with everything that is wrong at once; succeeds with what is unlikely as warnings. Never throws.
 */
export function readBody(data: unknown): Result<Body> {
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return { ok: false, issues: [notMeasurements] };
  const fields = data as Readonly<Record<string, unknown>>;
  const { written, issues: unread } = readNumbers(fields);
  const { units } = written;
  if (!units) return { ok: false, issues: unread };

  const all = inMillimetres(written.numbers, units);
  const { issues: wrongValues, refused } = valueIssues(written, all, units);
  const taken: Sizes = refused.has('units')
    ? {}
    : Object.fromEntries(Object.entries(all).filter(([name]) => !refused.has(name)));
  const child = isChild(written.age, taken);
  const { found, issues: moves } = withMoves(taken, written, units, child);
  const sizes = sizesOf(found);
  const contradicting = contradictions(sizes, units);
  const fitting = readFitting(Object.hasOwn(fields, 'fitting') ? fields.fitting : undefined, units);
  const issues = [
    ...unread,
    // What is likely is likely of women.
    ...wrongValues.filter(
      (issue) => isError(issue) || (!child && !moves.some(({ path }) => path === issue.path)),
    ),
    ...moves,
    ...contradicting,
    ...(contradicting.length > 0 && !written.reconcile ? [reconcileOffered] : []),
    ...(child ? [childNote(written.age)] : []),
    ...fitting.issues,
  ];
  if (issues.some(isError) || !isEnough(found)) return { ok: false, issues };

  const body: Body = {
    name: written.name,
    wearer: child ? 'child' : 'adult',
    ...completed(found),
    fitting: fitting.changes,
  };
  const remarks = child ? [] : unlikelyProportions(body, units);
  return {
    ok: true,
    value: body,
    issues: [...issues, ...cupDisagrees(sizes, written.cup, units), ...remarks],
  };
}

const notMeasurements: Issue = {
  code: 'no-measurements',
  severity: 'error',
  path: '',
  message:
    'There are no measurements here. Write one a line, such as "bustGirth: 92", and their unit: "units: cm".',
};

const isError = ({ severity }: Issue): boolean => severity === 'error';

function inMillimetres(numbers: Sizes, units: Unit): Sizes {
  const sizes: Partial<Record<MeasurementName, number>> = {};
  for (const name of Object.keys(numbers) as MeasurementName[]) {
    const number = numbers[name];
    if (number !== undefined) sizes[name] = number * unitScale(name, units);
  }
  return sizes;
}

/**
 * What is wrong with the numbers by themselves; a mistake that was recognised stands in for the ranges it breaks, and for
 * the contradictions. A child's are only held to what is possible.
 */
function valueIssues(
  { numbers, age, sure }: WrittenNumbers,
  sizes: Sizes,
  units: Unit,
): { readonly issues: readonly Issue[]; readonly refused: ReadonlySet<string> } {
  const isYoung = age !== undefined && isChild(age, {});
  const standing = standingAmong(sizes);
  const mistakes = isYoung ? [] : mistakesIn(numbers, sizes, units, sure, standing);
  const explained = new Set<string>(mistakes.flatMap(({ explains }) => explains));
  const beyond = outOfRange(numbers, units, isYoung).filter(({ path }) => !explained.has(path));
  const asWritten = mistakes.length === 0 && !beyond.some(isError) && !isChild(age, sizes);
  const issues = [
    ...mistakes.map(({ issue }) => issue),
    ...beyond,
    ...(asWritten ? digitsInDoubt(sizes, units, sure, standing) : []),
  ];
  return { issues, refused: new Set([...issues.filter(isError).map(({ path }) => path), ...explained]) };
}

/** Numbers that cannot stand as they are, or, where all can, those that were all but certainly meant otherwise. */
function mistakesIn(
  numbers: Sizes,
  sizes: Sizes,
  units: Unit,
  sure: readonly MeasurementName[],
  standing: Standing | undefined,
): readonly Mistake[] {
  const recognised = recognisedMistakes(numbers, units, sure);
  if (recognised.length > 0 || isChild(undefined, sizes)) return recognised;
  const impossible = outOfRange(numbers, units, false).filter(isError);
  // One impossible number makes others look odd: then only what explains it is a mistake.
  return mixedUp(sizes, units, sure, standing).filter(({ explains }) =>
    impossible.every(({ path }) => explains.some((name) => name === path)),
  );
}

/** The measurements, and the under-bust girth that a cup stands for where it was not measured itself. */
function foundSizes(sizes: Sizes, cup: string | undefined): FoundSizes {
  const found: Partial<Record<MeasurementName, FoundSize>> = {};
  for (const name of measurementNames) {
    const value = sizes[name];
    if (value !== undefined) found[name] = measured(value);
  }
  const difference = cup === undefined ? undefined : cupDifference(cup);
  if (difference === undefined || sizes.bustGirth === undefined || found.underBustGirth) return found;
  const basis = `bust girth less ${difference} mm, the middle of cup ${cup} (EN 13402)`;
  return { ...found, underBustGirth: derived(sizes.bustGirth - difference, basis) };
}

function sizesOf(found: FoundSizes): Sizes {
  const sizes: Partial<Record<MeasurementName, number>> = {};
  for (const name of Object.keys(found) as MeasurementName[]) {
    const size = found[name];
    if (size) sizes[name] = size.value;
  }
  return sizes;
}

/** What was found, with contradicting measurements moved to the most likely body behind them where that is asked. */
function withMoves(
  taken: Sizes,
  { cup, reconcile, sure }: WrittenNumbers,
  units: Unit,
  child: boolean,
): { readonly found: FoundSizes; readonly issues: readonly Issue[] } {
  const found = foundSizes(taken, cup);
  if (!reconcile || !isEnough(found)) return { found, issues: [] };
  const { size } = completed(found);
  const women = child ? undefined : womenLike(size);
  const answer = reconciled({ taken, size, sure, women, step: tapeMarks[units] });
  switch (answer.kind) {
    case 'consistent':
      return { found, issues: [] };
    case 'sure of too much':
      return { found, issues: [sureOfTooMuch(answer.between)] };
    case 'reconciled': {
      const sizes = Object.fromEntries(answer.moved.map(({ name, value }) => [name, value]));
      const moved = Object.fromEntries(answer.moved.map(({ name, ...move }) => [name, reconciledTo(move)]));
      return {
        // A cup stands for what is under the bust as it was moved.
        found: { ...foundSizes({ ...taken, ...sizes }, cup), ...moved },
        issues: movedIssues(answer.moved, units),
      };
    }
  }
}

const isEnough = (found: FoundSizes): found is FoundSizes & Essential =>
  essentialNames.every((name) => found[name] !== undefined);

/** Both a cup and an under-bust girth were given, and they do not say the same. */
function cupDisagrees(sizes: Sizes, cup: string | undefined, units: Unit): readonly Issue[] {
  const { bustGirth, underBustGirth } = sizes;
  if (cup === undefined || bustGirth === undefined || underBustGirth === undefined) return [];
  const difference = bustGirth - underBustGirth;
  const letter = cupLetter(difference);
  if (letter === cup) return [];
  return [
    {
      code: 'cup-disagrees',
      severity: 'warning',
      path: 'cup',
      value: cup,
      message: `Bust girth less under-bust girth is ${inUnit(difference / millimetres[units], units)}, cup ${letter}, not ${cup}. The girths are used.`,
    },
  ];
}
