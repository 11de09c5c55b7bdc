import type { Issue } from '../../engine/issue.ts';
import type { Cloth } from '../../engine/lay-plan/cloth.ts';
import type { Matching } from '../../engine/lay-plan/hung.ts';
import { layTasks } from '../../engine/lay-plan/lay-plan.ts';
import { type Materials, materialsFor } from '../../engine/materials/materials.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { readFonts } from '../files/fonts.ts';
import { writeFiles } from '../files/write-files.ts';
import { askedGarment, draftedGarment, type GarmentOptions } from '../garment/drafted-garment.ts';
import { cutListResult, materialsLines, materialsResult } from '../garment/materials-words.ts';
import { used } from '../input/used.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { say, tell } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { table } from '../output/table.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { LaidResult } from '../results/lay.ts';
import type { ExitCode, Session } from '../session.ts';
import { type Halt, seekLay } from './lay-search.ts';
import { type MarkedSizes, markedSizes } from './marked-sizes.ts';
import {
  layFaults,
  layFiles,
  layTable,
  type PlannedLay,
  plannedLay,
  shareOf,
  stripeLines,
} from './planned-lay.ts';
import type { Effort } from './seek-lay.ts';

/** How to lay, and where to write it; for one body, or for sizes of a chart. */
export interface GarmentLay extends GarmentOptions {
  readonly sizes?: string;
  readonly only?: string;
  readonly cloth: Cloth;
  readonly effort: Effort;
  readonly out?: string;
}

/** Lays a garment for one body or several sizes, a plan for each cloth; what it says was read back from the plans as written. */
export async function layGarment(session: Session, name: string, asked: GarmentLay): Promise<ExitCode> {
  const { garment, cutLines, issues: found, reader } = await garmentToLay(session, name, asked);
  const { units } = reader;
  const tasks = used(layTasks(garment, cutLines, asked.cloth), units);
  const plans: PlannedLay[] = [];
  const issues: Issue[] = [...found];
  const halt: Halt = { asked: false };
  for (const task of tasks) {
    const seconds = asked.effort.seconds * shareOf(task, tasks);
    const lay = await seekLay(
      session,
      task.problem,
      { ...asked.effort, seconds },
      `laying ${task.clothName}`,
      halt,
    );
    const planned = plannedLay(task, lay, garment, units);
    issues.push(...layFaults(planned, garment));
    plans.push(planned);
  }
  const ok = !issues.some(({ severity }) => severity === 'error');
  if (asked.out !== undefined && ok) {
    const files = await layFiles(plans, garment, units, await readFonts());
    await writeFiles(asked.out, files);
    tell(session, `wrote ${[...files.keys()].join(', ')} into ${asked.out}\n`);
  }
  const materials = materialsFor(garment, cutLines, units, 'planned');
  if (asked.json) await session.write(json(layResult(garment, plans, materials, issues)));
  else if (ok)
    await say(
      session,
      `${garment.name} for ${garment.body}: no overlaps, every piece there (proven); ${lengthsLine(reader)}\n${printed(layTable(plans, units), reader)}${stripeLines(
        plans,
      )
        .map((line) => `${line}\n`)
        .join('')}\n${materialsLines(garment, materials, reader)}`,
    );
  sayIssues(session, issues, units);
  return ok ? 0 : 1;
}

async function garmentToLay(session: Session, name: string, asked: GarmentLay): Promise<MarkedSizes> {
  const { sizes } = asked;
  const wanted = await askedGarment(session, name, asked);
  if (sizes !== undefined) return markedSizes(session, wanted, { ...asked, sizes });
  const { garment, cutLines, report, reader } = await draftedGarment(session, wanted, asked);
  return { garment, cutLines, issues: report.issues, reader };
}

/** Of the columns only the cloth and how it is laid are no figures. */
const printed = ({ titles, rows }: WordTable, { columns }: Reader): string =>
  table(
    titles.map((title) => (title === 'cloth' || title === 'laid' ? { title } : { title, right: true })),
    rows,
    columns,
  );

/** What `lay --json` prints of a garment: lengths in mm. */
const layResult = (
  garment: Garment,
  plans: readonly PlannedLay[],
  materials: Materials,
  issues: readonly Issue[],
): LaidResult => ({
  ok: !issues.some(({ severity }) => severity === 'error'),
  lays: plans.map(({ plan, toBuy }) => ({
    cloth: plan.clothName,
    width: plan.cloth.width,
    folded: plan.cloth.folded,
    length: plan.length,
    needed: plan.needed,
    buy: toBuy,
    used: plan.used,
    leastLength: plan.leastLength,
    ...(plan.matched && { stripes: seamsOf(plan.matched) }),
    ...(plan.matchedAlong && { stripesAlong: seamsOf(plan.matchedAlong) }),
    pieces: plan.copies.map(({ of, copy }) => ({
      piece: of.piece,
      copy,
      gives: of.gives,
      onFold: of.onFold,
    })),
  })),
  cutList: cutListResult(garment),
  materials: materialsResult(materials),
  issues: issuesResult(issues),
});

/** Its seams without the places of the pieces. */
const seamsOf = ({ matched, matchedOnce, unmatched }: Matching) => ({ matched, matchedOnce, unmatched });
