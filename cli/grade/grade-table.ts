import type { Grade } from '../../engine/grading/grade.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { table } from '../output/table.ts';
import { evenTable, sizesTable } from './grade-rows.ts';

/** Every size with its cup, its finished girths and whether it is true; then what is even and what is not. */
export const gradeTable = (grade: Grade, reader: Reader): string =>
  `${lengthsLine(reader)}${printed(sizesTable(grade, reader.units), reader, 2, 1)}
Finished girths, and the worst mismatch of a seam.${grade.chart.source === '' ? '' : ` The chart: ${grade.chart.source}`}

${grade.axes.length === 0 ? 'One size alone has no steps.\n' : printed(evenTable(grade, reader.units), reader, 4, 0)}`;

/** A table whose columns hold figures, but for so many at its beginning and its end. */
const printed = ({ titles, rows }: WordTable, { columns }: Reader, before: number, after: number): string =>
  table(
    titles.map((title, i) => (i >= before && i < titles.length - after ? { title, right: true } : { title })),
    rows,
    columns,
  );
