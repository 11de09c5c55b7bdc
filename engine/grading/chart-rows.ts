import { measurementNames } from '../body/body.ts';
import type { Issue } from '../issue.ts';
import type { Choice } from '../pattern/styling.ts';
import { withoutTurns } from '../text/without-turns.ts';
import { blendedRow } from './blend.ts';
import type { ChartSize } from './chart.ts';
import { chartIssue, fieldsOf, isSaid, shown } from './chart-issues.ts';
import { type ChartRow, namesIn, readRow } from './row.ts';
import { steppedRows } from './stepped.ts';

/** A row that stands beside the run, with its body where that is a file's own. */
export interface RowBeside {
  readonly row: ChartRow;
  readonly body?: ChartSize;
}

/** The run of sizes: rows as they stand, or those that base and steps make. */
export function runOf(
  fields: Readonly<Record<string, unknown>>,
  items: readonly unknown[],
  choices: readonly Choice[],
  issues: Issue[],
): readonly ChartRow[] {
  if (isSaid(fields.base) || isSaid(fields.steps)) {
    const names = items.filter((item) => !fieldsOf(item)).map(shown);
    return steppedRows(fields.base, fields.steps, names, choices, issues);
  }
  return items.flatMap((item, i) => {
    const row = fieldsOf(item);
    if (!row) {
      issues.push(
        chartIssue(
          'size-not-understood',
          `sizes/${i + 1}`,
          `Size ${shown(item)} has no measurements: write them beside it, or a base and steps for all sizes.`,
        ),
      );
      return [];
    }
    if (isBeside(row)) return [];
    const read = readRow(row, choices, issues);
    return [{ ...read, sure: [...new Set([...namesIn(fields.sure), ...read.sure])] }];
  });
}

const isBeside = (row: Readonly<Record<string, unknown>>): boolean => isSaid(row.body) || isSaid(row.from);

/** What an item of the sizes is beside the run: a body's own file, or a blend of two sizes; nothing where it is of the run. */
export function besideRun(
  item: unknown,
  run: readonly ChartRow[],
  choices: readonly Choice[],
  bodies: ReadonlyMap<string, unknown>,
  issues: Issue[],
): readonly RowBeside[] {
  const fields = fieldsOf(item);
  if (!fields || !isBeside(fields)) return [];
  const { body, from, ...rest } = fields;
  const own = readRow(rest, choices, issues);
  if (isSaid(from)) {
    const row = blendedRow(own, from, run, issues);
    return row ? [{ row }] : [];
  }
  const data = fieldsOf(bodies.get(String(body)));
  if (!data) {
    issues.push(
      chartIssue('body-not-read', `size ${own.size}`, `${shown(body)} holds no measurements of a body.`),
    );
    return [];
  }
  const size = own.size || withoutTurns(shown(data.name ?? body));
  const given = measurementNames.filter((name) => isSaid(data[name]));
  const row = { ...own, size };
  return [
    {
      row,
      body: {
        name: size,
        size,
        cup: own.cup,
        body: { ...data, name: size },
        styling: own.styling,
        given,
        alone: true,
      },
    },
  ];
}

/** Every size has a name, and none has another's, nor the same cup twice. */
export function nameFaults(run: readonly ChartRow[], beside: readonly RowBeside[]): readonly Issue[] {
  const issues: Issue[] = [];
  const seen = new Set<string>();
  for (const [i, { size, cup }] of [...run, ...beside.map(({ row }) => row)].entries()) {
    const name = nameOf(size, cup);
    if (size === '')
      issues.push(chartIssue('size-unnamed', `sizes/${i + 1}`, `The size in place ${i + 1} has no name.`));
    else if (seen.has(name))
      issues.push(chartIssue('size-twice', `size ${name}`, `There are two sizes called ${name}.`));
    seen.add(name);
  }
  return issues;
}

/** A size as it is called: with its cup, where it has one. */
export const nameOf = (size: string, cup: string): string => (cup === '' ? size : `${size} ${cup}`);
