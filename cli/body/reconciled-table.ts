import { type Body, measurementNames } from '../../engine/body/body.ts';
import { measurementWords } from '../../engine/body/measurement-words.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell, SIXTEENTHS } from '../../engine/text/length.ts';
import { unitLabel } from '../../engine/text/units.ts';
import { type Reader, sizeDecimals } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';

const columns: readonly Column[] = [
  { title: 'measurement' },
  { title: 'written', right: true },
  { title: 'taken as', right: true },
  { title: 'moved', right: true },
  { title: 'usual error', right: true },
  { title: 'in usual errors', right: true },
  { title: '' },
];

/** What was moved to reconcile contradicting measurements: from where, how far in the reader's unit and in usual errors, and the suspect. */
export function reconciledTable({ size, known }: Body, { units, columns: width }: Reader): string {
  const rows = measurementNames.flatMap((name) => {
    const from = known[name];
    if (from.from !== 'reconciled') return [];
    const moved = size[name] - from.written;
    const length = (mm: number): string => lengthCell(mm, units, sizeDecimals[units], SIXTEENTHS);
    const words = {
      misread: 'looks misread: measure again',
      'first to blame': 'measure again first',
      'one of two': 'measure again first',
      none: '',
    }[from.suspicion];
    const or = from.orElse.length > 0 ? `, or else the ${from.orElse.map(measurementWords).join(', ')}` : '';
    const usual = from.usualError;
    return [
      [
        name,
        length(from.written),
        length(size[name]),
        length(moved),
        length(usual),
        fixed(moved / usual, 1),
        words + or,
      ],
    ];
  });
  return rows.length === 0
    ? '\nNothing contradicts: every measurement stays as it was written.\n'
    : `\nreconciled: these contradicted each other, and are taken as the most likely body behind them has them; ${unitLabel[units]}\n\n${table(columns, rows, width)}`;
}
