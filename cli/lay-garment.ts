import { evaluate } from '../engine/evaluate.ts';
import type { Issue } from '../engine/issue.ts';
import type { Cloth } from '../engine/lay-plan/cloth.ts';
import { layPage, laySvg } from '../engine/lay-plan/lay-drawing.ts';
import { type LayPlan, type LayTask, layPlan, layTasks, piecesAsked } from '../engine/lay-plan/lay-plan.ts';
import { provePlan } from '../engine/lay-plan/prove-plan.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { fixed, lengthIn } from '../engine/text/length.ts';
import type { Unit } from '../engine/text/units.ts';
import { readFonts } from './fonts.ts';
import { type Effort, seekLay } from './lay-search.ts';
import { lengthToBuy } from './length-to-buy.ts';
import { findGarment, readStyling } from './options.ts';
import { plain } from './plain.ts';
import { readBodyFile } from './read-body.ts';
import { type Reader, readerOf } from './reader.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { table } from './table.ts';
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
  const evaluated = evaluate(draft, body, styling);
  if (!evaluated.ok) throw new Unusable(evaluated.issues, reader.units);
  const { garment, cutLines, report } = evaluated.value;
  const tasks = layTasks(garment, cutLines, asked.cloth);
  if (!tasks.ok) throw new Unusable(tasks.issues, reader.units);
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
    const toBuy = lengthToBuy(plan.needed, reader.units);
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
    session.tell(plain(`wrote ${[...files.keys()].join(', ')} into ${asked.out}\n`));
  }
  if (asked.json) await session.write(json(layResult(plans, issues)));
  else if (ok)
    await session.write(
      plain(`${garment.name} for ${garment.body}: no overlaps, every piece there (proven)\n\n`) +
        plain(
          table(
            columns,
            plans.map((planned) => row(planned, reader)),
            reader.columns,
          ),
        ),
    );
  sayIssues(session, issues, reader.units);
  return ok ? 0 : 1;
}

type Planned = { readonly plan: LayPlan; readonly toBuy: string };

const columns = [
  { title: 'cloth' },
  { title: 'width', right: true },
  { title: 'pieces laid', right: true },
  { title: 'length', right: true },
  { title: 'used', right: true },
  { title: 'buy', right: true },
] as const;

const row = ({ plan, toBuy }: Planned, { units }: Reader): string[] => [
  plan.clothName,
  `${lengthIn(plan.cloth.width, units)} ${plan.cloth.folded ? 'folded' : 'open'}`,
  String(plan.copies.length),
  lengthIn(Math.ceil(plan.length), units),
  `${fixed(100 * plan.used, 1)} %`,
  toBuy,
];

/** What `lay --json` prints of a garment: lengths in mm. */
const layResult = (plans: readonly Planned[], issues: readonly Issue[]) => ({
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
