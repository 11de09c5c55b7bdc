import { chosenSizes, shownSizes } from '../../engine/grading/chosen-sizes.ts';
import { draftSize, sizeToMake } from '../../engine/grading/draft-sizes.ts';
import type { Issue } from '../../engine/issue.ts';
import { type MarkedSize, type Marker, markerOf } from '../../engine/lay-plan/marker.ts';
import type { Unit } from '../../engine/text/units.ts';
import type { AskedGarment } from '../garment/drafted-garment.ts';
import { readChartFile } from '../input/read-chart.ts';
import { Unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import { type Reader, readerOf } from '../output/reader.ts';
import type { Session } from '../session.ts';

/** Which sizes of which chart are cut together. */
export interface SizesAsked {
  readonly sizes: string;
  /** Names with commas between; left out, every size of the chart's run. */
  readonly only?: string | undefined;
  readonly units?: Unit | undefined;
}

/** Several sizes as one garment to lay, with all that their checks and the chart's reader have to say, and who reads it. */
export interface MarkedSizes extends Marker {
  readonly issues: readonly Issue[];
  readonly reader: Reader;
}

/** Drafts the sizes of a chart that are asked for, each once, and puts them together. Throws `Unusable` where one cannot be, or is not true. */
export async function markedSizes(
  session: Session,
  { draft, styling }: AskedGarment,
  { sizes: file, only, units }: SizesAsked,
): Promise<MarkedSizes> {
  const { chart, issues } = await readChartFile(file, draft, units);
  const rows = only === undefined ? shownSizes(chart) : used(chosenSizes(chart, only));
  const reader = readerOf(session, units, rows[0]?.body);
  const made = [...new Set(rows)].map((row) => {
    const size = draftSize(draft, row, styling);
    const drafted = size.ok ? sizeToMake(draft, row, size.value) : size;
    if (!drafted.ok) throw new Unusable(drafted.issues, reader.units);
    return { row, made: drafted.value };
  });
  const marker = markerOf(
    made.map(({ row, made: { garment, cutLines } }): MarkedSize => {
      const count = rows.filter((one) => one === row).length;
      return { size: row.name, garment, cutLines, count };
    }),
  );
  const said = made.flatMap(({ made: { report } }) => report.issues);
  return { ...marker, issues: [...issues, ...said], reader };
}
