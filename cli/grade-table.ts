import { cupOf } from '../engine/body/cup.ts';
import type { Grade } from '../engine/grading/grade.ts';
import type { GradedSize } from '../engine/grading/laid-size.ts';
import { fixed } from '../engine/text/length.ts';
import { type Column, table } from './table.ts';

/** Every size with its cup, its finished girths and whether it is true; then what is even and what is not. */
export function gradeTable(grade: Grade, width: number): string {
  const levels = [
    ...new Set(grade.sizes.flatMap(({ made }) => made.report.girths.map(({ level }) => level))),
  ];
  const columns: readonly Column[] = [
    { title: 'size' },
    { title: 'cup' },
    ...levels.map((title): Column => ({ title, right: true })),
    { title: 'worst seam', right: true },
    { title: 'all true' },
  ];
  return `${table(
    columns,
    grade.sizes.map((size) => sizeRow(size, levels)),
    width,
  )}
Finished girths, and the worst mismatch of a seam, in mm.${grade.chart.source === '' ? '' : ` The chart: ${grade.chart.source}`}

${evenTable(grade, width)}`;
}

function sizeRow({ of, made }: GradedSize, levels: readonly string[]): readonly string[] {
  const { girths, seams, ok } = made.report;
  const worst = Math.max(0, ...seams.map(({ mismatch }) => mismatch));
  return [
    of.name,
    of.cup || cupOf(made.body).letter,
    ...levels.map((level) => {
      const girth = girths.find((one) => one.level === level);
      return girth ? fixed(girth.finished, 1) : '';
    }),
    fixed(worst, 4),
    ok ? 'yes' : 'NO',
  ];
}

const evenColumns: readonly Column[] = [
  { title: 'along' },
  { title: 'in' },
  { title: 'from' },
  { title: 'to' },
  { title: 'steps looked at', right: true },
  { title: 'uneven', right: true },
  { title: 'most a step changes (mm)', right: true },
];

/** Axis by axis: steps that change though the chart's own do not; how much one does, where those stay as they are. */
const evenTable = ({ axes }: Grade, width: number): string =>
  axes.length === 0
    ? 'One size alone has no steps.\n'
    : table(
        evenColumns,
        axes.map(({ along, at, names, looked, greatest, uneven }) => [
          along,
          at,
          names[0] ?? '',
          names.at(-1) ?? '',
          String(looked),
          String(uneven.length),
          greatest === undefined ? '' : fixed(greatest, 1),
        ]),
        width,
      );
