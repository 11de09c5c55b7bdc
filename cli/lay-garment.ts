import { evaluate } from '../engine/evaluate.ts';
import type { Issue } from '../engine/issue.ts';
import type { Cloth } from '../engine/lay-plan/cloth.ts';
import { layPage, laySvg } from '../engine/lay-plan/lay-drawing.ts';
import { type LayPlan, type LayTask, layPlan, layTasks, piecesAsked } from '../engine/lay-plan/lay-plan.ts';
import { provePlan } from '../engine/lay-plan/prove-plan.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { lengthCell } from '../engine/text/length.ts';
import { lengthToBuy } from '../engine/text/length-to-buy.ts';
import type { Unit } from '../engine/text/units.ts';
import { readFonts } from './fonts.ts';
import { type Effort, seekLay } from './lay-search.ts';
import { findGarment, readStyling } from './options.ts';
import { readBodyFile } from './read-body.ts';
import { lengthsLine, type Reader, readerOf } from './reader.ts';
import type { LaidResult } from './results/lay.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { type Column, table } from './table.ts';
import { Unusable } from './unusable.ts';
import { issuesResult, json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';

/** What to lay and how. */
export interface GarmentLay {
  readonly name: string;
  readonly body: string;
  readonly styling: string | undefined;
  readonly set: readonly string[] | undefined;
  readonly cloth: Cloth;
  readonly effort: Effort;
  readonly out: string | undefined;
  readonly units: Unit | undefined;
  readonly json: boolean;
}

/** Lays a garment for one body, a plan for each cloth; what it says was read back from the plans as written. */
export async function layGarment(session: Session, asked: GarmentLay): Promise<ExitCode> {
  const draft = findGarment(session.garments, asked.name);
  const styling = await readStyling(asked.styling, asked.set);
  const body = await readBodyFile(asked.body);
  const reader = readerOf(session, asked.units, body);
  const { units } = reader;
  const evaluated = evaluate(draft, body, styling);
  if (!evaluated.ok) throw new Unusable(evaluated.issues, units);
  const { garment, cutLines, report } = evaluated.value;
  const tasks = layTasks(garment, cutLines, asked.cloth);
  if (!tasks.ok) throw new Unusable(tasks.issues, units);
  const plans: { readonly plan: LayPlan; readonly toBuy: string; readonly svg: string }[] = [];
  const issues: Issue[] = [...report.issues];
  for (const task of tasks.value) {
    const seconds = asked.effort.seconds * shareOf(task, tasks.value);
    const lay = await seekLay(
      session,
      task.problem,
      { ...asked.effort, seconds },
      `laying ${task.clothName}`,
    );
    const plan = layPlan(task, lay, garment);
    const toBuy = lengthToBuy(plan.needed, units);
    const svg = laySvg(plan, toBuy);
    issues.push(...provePlan(svg, task.pieces, piecesAsked(garment, task.clothName)));
    plans.push({ plan, toBuy, svg });
  }
  const ok = !issues.some(({ severity }) => severity === 'error');
  if (asked.out !== undefined && ok) {
    const title = `${garment.name} for ${garment.body}: lays`;
    const pages = plans.map(({ plan, toBuy }) => layPage(plan, toBuy));
    const files = new Map<string, string | Uint8Array>([
      ...plans.map(({ plan, svg }) => [`lay-${plan.clothName}.svg`, svg] as const),
      ['lay.pdf', await pdfOf(pages, title, await readFonts())],
    ]);
    await writeFiles(asked.out, files);
    tell(session, `wrote ${[...files.keys()].join(', ')} into ${asked.out}\n`);
  }
  if (asked.json) await session.write(json(layResult(plans, issues)));
  else if (ok)
    await say(
      session,
      `${garment.name} for ${garment.body}: no overlaps, every piece there (proven); ${lengthsLine(reader)}\n${layTable(plans, reader)}`,
    );
  sayIssues(session, issues, units);
  return ok ? 0 : 1;
}

type Planned = { readonly plan: LayPlan; readonly toBuy: string };

const columns: readonly Column[] = [
  { title: 'cloth' },
  { title: 'width', right: true },
  { title: 'laid' },
  { title: 'pieces', right: true },
  { title: 'length', right: true },
  { title: 'used', right: true },
  { title: 'buy', right: true },
];

function layTable(plans: readonly Planned[], { units, columns: width }: Reader): string {
  const rows = plans.map(({ plan, toBuy }) => [
    plan.clothName,
    lengthCell(plan.cloth.width, units),
    plan.cloth.folded ? 'folded' : 'open',
    String(plan.copies.length),
    lengthCell(plan.length, units),
    `${(100 * plan.used).toFixed(1)} %`,
    toBuy,
  ]);
  return table(columns, rows, width);
}

/** What `lay --json` prints of a garment: lengths in mm. */
const layResult = (plans: readonly Planned[], issues: readonly Issue[]): LaidResult => ({
  ok: !issues.some(({ severity }) => severity === 'error'),
  lays: plans.map(({ plan, toBuy }) => ({
    cloth: plan.clothName,
    width: plan.cloth.width,
    folded: plan.cloth.folded,
    length: plan.length,
    needed: plan.needed,
    buy: toBuy,
    used: plan.used,
    pieces: plan.copies.map(({ of, copy }) => ({
      piece: of.piece,
      copy,
      gives: of.gives,
      onFold: of.onFold,
    })),
  })),
  issues: issuesResult(issues),
});

/** The share of the time that a cloth gets: as its copies to all copies. */
function shareOf(task: LayTask, all: readonly LayTask[]): number {
  const copies = ({ pieces }: LayTask): number => pieces.reduce((sum, { count }) => sum + count, 0);
  return copies(task) / all.reduce((sum, other) => sum + copies(other), 0);
}
