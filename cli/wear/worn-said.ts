import { fixed } from '../../engine/text/figure.ts';
import { lengthIn } from '../../engine/text/length.ts';
import { unitLabel } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { cannotKnow } from '../../engine/wear/cannot-know.ts';
import type { Judged } from '../../engine/wear/judged.ts';
import type { Worn } from '../../engine/wear/worn.ts';
import type { Reader } from '../output/reader.ts';
import type { PutOn } from './hanging.ts';
import { findingsRows, judgedRows, nothingOff, type WornRows } from './wear-table.ts';
import type { PageTable, WornPage } from './worn-page.ts';

/** How a search for rest ended, in a line. */
export const restLine = ({ stopped, settled: { atRest, residual, steps }, spacing }: Worn): string =>
  stopped
    ? `stopped after ${steps} steps on a mesh of ${spacing} mm: what is told is the best so far`
    : atRest
      ? `at rest after ${steps} steps`
      : `small folds were still shifting after ${steps} steps, by forces up to ${fixed(1000 * residual, 1)} mN`;

/**
 * What a figure of a first answer may be off by, mm: no less than figures of the eight bodies' bodices on triangles of 20 mm lay
 * from those on 12 mm. Eases lay within 4 mm and gaps within 5, but for the under-bust and the front armhole of the fullest body, 12 and 19.
 */
export const quickWithin = { ease: 12, level: 6, gap: 20, bustPoint: 5, side: 4 } as const;

export const quickLine = `A first answer: on a finer mesh an ease may be another by ${quickWithin.ease} mm, a waist level or a gap by ${quickWithin.gap} mm, the bust point by ${quickWithin.bustPoint} mm, the side seam by ${quickWithin.side} mm.`;

/** What the page of a worn garment says in words and tables; `beside` names who it was drafted for, where she is another. */
export function wornSaid(
  { hung, findings }: PutOn,
  verdicts: readonly Judged[],
  beside: string | undefined,
  { units }: Reader,
  quick: boolean,
): Omit<WornPage, 'scene'> {
  const { cloth } = hung.sewn.sheet;
  const off = judgedRows(verdicts, units);
  const lead = [
    `Hung in ${cloth.name} (${cloth.weight} g/m²; ${cloth.source}) on a mesh of ${lengthIn(hung.spacing, units)}; ${restLine(hung)}.`,
    ...(quick ? [withLengthsIn(quickLine, units)] : []),
    `Lengths in ${unitLabel[units]}.`,
    ...(beside === undefined ? [] : [`“Should be” is how the same sits on ${beside}.`]),
    ...(off.rows.length === 0 ? [`${nothingOff[0]?.toUpperCase()}${nothingOff.slice(1)}.`] : []),
  ].join(' ');
  return {
    lead,
    tables: [
      ...(off.rows.length === 0 ? [] : [pageTable('What to alter', off)]),
      pageTable('What is found', findingsRows(findings, units)),
    ],
    cannotKnow,
  };
}

const pageTable = (caption: string, { columns, rows }: WornRows): PageTable => ({
  caption,
  heads: columns.map(({ title }) => title),
  figures: columns.flatMap(({ right }, i) => (right ? [i] : [])),
  rows,
});
