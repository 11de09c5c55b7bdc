import type { Issue, Result } from '../issue.ts';
import { inUnit } from '../text/length.ts';
import { millimetres, type Unit } from '../text/units.ts';
import { type Body, type MeasurementName, measurementNames } from './body.ts';
import { childNote, isChild } from './child.ts';
import { contradictions } from './contradictions.ts';
import { cupDifference, cupLetter } from './cup.ts';
import { completed } from './estimate.ts';
import { derived, type Essential, essentialNames, type Found, type FoundSizes, measured } from './found.ts';
import { recognisedMistakes } from './mistaken.ts';
import { unlikelyProportions } from './proportions.ts';
import { outOfRange, unitScale } from './ranges.ts';
import { readFitting } from './read-fitting.ts';
import { readNumbers, type Written } from './read-numbers.ts';

type Sizes = Readonly<Partial<Record<MeasurementName, number>>>;

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
  const wrongValues = valueIssues(written, units);
  const refused = new Set(wrongValues.filter(isError).map(({ path }) => path));
  const sizes: Sizes = refused.has('units')
    ? {}
    : Object.fromEntries(Object.entries(all).filter(([name]) => !refused.has(name)));
  const child = isChild(written.age, sizes);
  const found = foundSizes(sizes, written.cup);
  const fitting = readFitting(Object.hasOwn(fields, 'fitting') ? fields.fitting : undefined, units);
  const issues = [
    ...unread,
    // What is likely is likely of women.
    ...wrongValues.filter((issue) => isError(issue) || !child),
    ...contradictions({ ...sizes, ...underBustOf(found) }, units),
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

const inMillimetres = (numbers: Sizes, units: Unit): Sizes =>
  Object.fromEntries(
    Object.entries(numbers).map(([name, number]) => [
      name,
      number * unitScale(name as MeasurementName, units),
    ]),
  );

/** What is wrong with single numbers; a mistake that was recognised stands in for the ranges it breaks. */
function valueIssues({ numbers, age }: Written, units: Unit): readonly Issue[] {
  const isYoung = age !== undefined && isChild(age, {});
  const mistakes = isYoung ? [] : recognisedMistakes(numbers, units);
  const explained = new Set<string>(mistakes.flatMap(({ explains }) => explains));
  return [
    ...mistakes.map(({ issue }) => issue),
    ...outOfRange(numbers, units, isYoung).filter(({ path }) => !explained.has(path)),
  ];
}

/** The measurements, and the under-bust girth that a cup stands for where it was not measured itself. */
function foundSizes(sizes: Sizes, cup: string | undefined): FoundSizes {
  const found: Partial<Record<MeasurementName, Found>> = {};
  for (const name of measurementNames) {
    const value = sizes[name];
    if (value !== undefined) found[name] = measured(value);
  }
  const difference = cup === undefined ? undefined : cupDifference(cup);
  if (difference === undefined || sizes.bustGirth === undefined || found.underBustGirth) return found;
  const basis = `bust girth less ${difference} mm, the middle of cup ${cup} (EN 13402)`;
  return { ...found, underBustGirth: derived(sizes.bustGirth - difference, basis) };
}

const underBustOf = ({ underBustGirth }: FoundSizes): Sizes =>
  underBustGirth ? { underBustGirth: underBustGirth.value } : {};

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
