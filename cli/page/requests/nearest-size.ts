import { measurementWords, type WordTable } from '../../../drafts/index.ts';
import {
  homeChanges,
  homeTable,
  leftWords,
  type Nearness,
  nearestWords,
  offTable,
} from '../../grade/nearest-rows.ts';
import { nearnessOf } from '../../grade/nearness.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { chartRead } from './asked-chart.ts';
import { refusal } from './made-draft.ts';
import { readerUnits } from './reader-units.ts';
import type { ChartFile } from './sizes-messages.ts';
import { toldIssues } from './told-issues.ts';

/** The size of a chart that is nearest to her, how far it is off, and what to alter. */
export async function nearest({
  asked,
  chart: file,
}: {
  readonly asked: AskedDraft;
  readonly chart: ChartFile;
}) {
  try {
    const { draft, done } = await draftingOf(asked);
    const { chart, issues } = chartRead(draft, file);
    const units = readerUnits(asked.body);
    const { found, issues: said } = await done(() =>
      nearnessOf(draft, chart, asked.body, asked.choices, units),
    );
    const near = {
      words: nearestWords(found),
      units,
      off: inWords(offTable(found, units), found),
      home: homeTable(found, units),
      changes: homeChanges(found, units),
      left: leftWords(found, units),
    };
    return { near, issues: toldIssues([...issues, ...said], units) };
  } catch (error) {
    return { near: undefined, issues: refusal(error) };
  }
}

/** The table with measurements called as they are spoken of. */
const inWords = ({ titles, rows }: WordTable, { near }: Nearness): WordTable => ({
  titles,
  rows: rows.map(([name = '', ...cells], i) => {
    const measurement = near.off[i]?.measurement;
    return [measurement ? measurementWords(measurement) : name, ...cells];
  }),
});
