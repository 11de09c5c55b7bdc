import { cupOf } from '../../engine/body/cup.ts';
import type { Grade } from '../../engine/grading/grade.ts';
import type { GradedSize } from '../../engine/grading/laid-size.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import { decimalCell, EIGHTHS, lengthCell } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';

/** Every size with its cup, its finished girths, its worst seam and whether it is true. */
export function sizesTable({ sizes }: Grade, units: Unit): WordTable {
  const levels = [...new Set(sizes.flatMap(({ made }) => made.report.girths.map(({ level }) => level)))];
  return {
    titles: ['size', 'cup', ...levels, 'worst seam', 'all true'],
    rows: sizes.map((size) => sizeRow(size, levels, units)),
  };
}

function sizeRow({ of, made }: GradedSize, levels: readonly string[], units: Unit): readonly string[] {
  const { girths, seams, ok } = made.report;
  const worst = Math.max(0, ...seams.map(({ mismatch }) => mismatch));
  return [
    of.name,
    of.cup || cupOf(made.body).letter,
    ...levels.map((level) => {
      const girth = girths.find((one) => one.level === level);
      return girth ? lengthCell(girth.finished, units, 1, EIGHTHS) : '';
    }),
    decimalCell(worst, units, 4),
    ok ? 'yes' : 'NO',
  ];
}

/** Axis by axis: steps that change though the chart's own do not; how much one does, where those stay as they are. */
export const evenTable = ({ axes }: Grade, units: Unit): WordTable => ({
  titles: ['along', 'in', 'from', 'to', 'steps looked at', 'uneven', 'most a step changes'],
  rows: axes.map(({ along, at, names, looked, greatest, uneven }) => [
    along,
    at,
    names[0] ?? '',
    names.at(-1) ?? '',
    String(looked),
    String(uneven.length),
    greatest === undefined ? '' : decimalCell(greatest, units, 1),
  ]),
});
