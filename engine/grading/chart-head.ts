import { cupLetters } from '../body/cup-letters.ts';
import type { Issue } from '../issue.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { unitNames } from '../text/units.ts';
import { chartIssue, isSaid, shown } from './chart-issues.ts';
import { type CupsAt, cupsAtNames } from './in-cup.ts';
import { namesIn } from './row.ts';

/* What a chart says of itself, beside its sizes. */

const chartFields = ['name', 'source', 'units', 'sizes', 'base', 'steps', 'cups', 'cupsAt', 'sure'] as const;

/** Every field that a chart has not. */
export const unknownFields = (fields: Readonly<Record<string, unknown>>): readonly Issue[] =>
  Object.keys(fields)
    .filter((field) => !chartFields.some((known) => known === field))
    .map(unknownField);

function unknownField(field: string): Issue {
  const near = nearestWord(field, chartFields);
  const hint = near ? `Do you mean ${near}?` : `Known are ${chartFields.join(', ')}.`;
  return chartIssue('unknown-chart-field', shown(field), `A chart has no “${shown(field)}”. ${hint}`);
}

/** The unit of the chart: as it says itself, or as it is told; not both and different. */
export function unitsOf(said: unknown, told: string | undefined, issues: Issue[]): string | undefined {
  if (told !== undefined && !unitNames.some((unit) => unit === told))
    issues.push(
      chartIssue(
        'unknown-unit',
        '--units',
        `${shown(told)} is no unit for a chart: use ${unitNames.join(', ')}.`,
      ),
    );
  if (isSaid(said) && told !== undefined && said !== told)
    issues.push(
      chartIssue(
        'units-said-twice',
        '--units',
        `The chart says units: ${shown(said)}; --units says ${told}.`,
      ),
    );
  return isSaid(said) ? shown(said) : told;
}

/** Its cups, from the smallest; none where it has none. */
export function cupsOf(said: unknown, issues: Issue[]): readonly string[] {
  if (!isSaid(said)) return [];
  const letters = namesIn(said).map(shown);
  for (const letter of letters)
    if (!cupLetters.includes(letter))
      issues.push(
        chartIssue(
          'unknown-cup',
          'cups',
          `${shown(letter)} is no cup of EN 13402: use ${cupLetters.join(', ')}.`,
        ),
      );
  if (new Set(letters).size < letters.length)
    issues.push(chartIssue('cup-twice', 'cups', 'The chart names a cup twice.'));
  return letters.toSorted((a, b) => cupLetters.indexOf(a) - cupLetters.indexOf(b));
}

/** What stays while the cup changes. */
export function cupsAtOf(said: unknown, issues: Issue[]): CupsAt {
  const found = cupsAtNames.find((name) => name === said);
  if (isSaid(said) && !found)
    issues.push(
      chartIssue(
        'unknown-cups-at',
        'cupsAt',
        `“${shown(said)}” can be bust or underBust: what stays while the cup changes.`,
      ),
    );
  return found ?? 'bust';
}
