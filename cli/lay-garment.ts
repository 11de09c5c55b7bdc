import type { Issue } from '../engine/issue.ts';
import type { Cloth } from '../engine/lay-plan/cloth.ts';
import { layPage, laySvg } from '../engine/lay-plan/lay-drawing.ts';
import { type LayPlan, type LayTask, layPlan, layTasks, piecesAsked } from '../engine/lay-plan/lay-plan.ts';
import { provePlan } from '../engine/lay-plan/prove-plan.ts';
import { type Materials, materialsFor } from '../engine/materials/materials.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { fixed } from '../engine/text/figure.ts';
import { lengthCell } from '../engine/text/length.ts';
import { lengthToBuy } from '../engine/text/length-to-buy.ts';
import { askedGarment, draftedGarment, type GarmentOptions } from './drafted-garment.ts';
import { readFonts } from './fonts.ts';
import { type Effort, type Halt, seekLay } from './lay-search.ts';
import { type MarkedSizes, markedSizes } from './marked-sizes.ts';
import { cutListResult, materialsLines, materialsResult } from './materials-words.ts';
import { lengthsLine, type Reader } from './reader.ts';
import type { LaidResult } from './results/lay.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { type Column, table } from './table.ts';
import { used } from './used.ts';
import { issuesResult, json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';

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
  const plans: { readonly plan: LayPlan; readonly toBuy: string; readonly svg: string }[] = [];
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
    const plan = layPlan(task, lay, garment);
    const toBuy = lengthToBuy(plan.needed, units);
    const svg = laySvg(plan, toBuy, units);
    issues.push(...provePlan(svg, task.pieces, piecesAsked(garment, task.clothName)));
    plans.push({ plan, toBuy, svg });
  }
  const ok = !issues.some(({ severity }) => severity === 'error');
  if (asked.out !== undefined && ok) {
    const title = `${garment.name} for ${garment.body}: lays`;
    const pages = plans.map(({ plan, toBuy }) => layPage(plan, toBuy, units));
    const files = new Map<string, string | Uint8Array>([
      ...plans.map(({ plan, svg }) => [`lay-${plan.clothName}.svg`, svg] as const),
      ['lay.pdf', await pdfOf(pages, title, await readFonts())],
    ]);
    await writeFiles(asked.out, files);
    tell(session, `wrote ${[...files.keys()].join(', ')} into ${asked.out}\n`);
  }
  const materials = materialsFor(garment, cutLines, units, 'planned');
  if (asked.json) await session.write(json(layResult(garment, plans, materials, issues)));
  else if (ok)
    await say(
      session,
      `${garment.name} for ${garment.body}: no overlaps, every piece there (proven); ${lengthsLine(reader)}\n${layTable(plans, reader)}${stripeLines(plans)}\n${materialsLines(garment, materials, reader)}`,
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

type Planned = { readonly plan: LayPlan; readonly toBuy: string };

const columns: readonly Column[] = [
  { title: 'cloth' },
  { title: 'width', right: true },
  { title: 'laid' },
  { title: 'pieces', right: true },
  { title: 'length', right: true },
  { title: 'no lay under', right: true },
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
    lengthCell(plan.leastLength, units),
    `${fixed(100 * plan.used, 1)} %`,
    toBuy,
  ]);
  return table(columns, rows, width);
}

/** At which seams stripes meet, where the cloth has any. */
function stripeLines(plans: readonly Planned[]): string {
  const plan = plans[0]?.plan;
  const named = (what: string, seams: readonly string[] = []): string =>
    seams.length > 0 ? `${what}: ${seams.join('; ')}\n` : '';
  return [
    named('stripes meet at', plan?.matched?.matched),
    named('they cannot also meet at', plan?.matched?.unmatched),
    named('stripes along the cloth meet at', plan?.matchedAlong?.matched),
    named('they do not meet at', plan?.matchedAlong?.unmatched),
  ].join('');
}

/** What `lay --json` prints of a garment: lengths in mm. */
const layResult = (
  garment: Garment,
  plans: readonly Planned[],
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
    ...(plan.matched && { stripes: { matched: plan.matched.matched, unmatched: plan.matched.unmatched } }),
    ...(plan.matchedAlong && {
      stripesAlong: { matched: plan.matchedAlong.matched, unmatched: plan.matchedAlong.unmatched },
    }),
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

/** The share of the time that a cloth gets: as its copies to all copies. */
function shareOf(task: LayTask, all: readonly LayTask[]): number {
  const copies = ({ pieces }: LayTask): number => pieces.reduce((sum, { count }) => sum + count, 0);
  return copies(task) / all.reduce((sum, other) => sum + copies(other), 0);
}
