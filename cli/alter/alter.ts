import { Command } from 'commander';
import { alter } from '../../engine/alter.ts';
import { draftBounds } from '../../engine/checks/bounds.ts';
import { checkGarment } from '../../engine/checks/check-garment.ts';
import { cutReady } from '../../engine/checks/cut-ready.ts';
import { cuttingLines } from '../../engine/finishing/cut-lines.ts';
import type { Edge } from '../../engine/geometry/curve.ts';
import { PARALLEL } from '../../engine/geometry/tolerance.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { pdfOf } from '../../engine/render/pdf/write-pdf.ts';
import { pieceSvgs } from '../../engine/render/svg.ts';
import { readPaper } from '../../engine/render/tiles/papers.ts';
import { printPages } from '../../engine/render/tiles/print-pages.ts';
import { walkPartner } from '../../engine/shaping/walk-partner.ts';
import { readFonts } from '../files/fonts.ts';
import { writeFiles } from '../files/write-files.ts';
import { jsonOption } from '../input/options.ts';
import { used } from '../input/used.ts';
import { readerOf, unitsOption } from '../output/reader.ts';
import { say, tell } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { json } from '../output/walk-result.ts';
import type { ExitCode, Session } from '../session.ts';
import {
  type AlterOptions,
  alteringOptions,
  outcomeOptions,
  readingOptions,
  thenOption,
} from './alter-options.ts';
import { type AlterOutcome, alterResult, alterTables } from './alter-result.ts';
import { alterationOf, type StepOptions, stepsOf } from './alter-steps.ts';
import { readOwn, readPartner } from './read-traced.ts';

/** `bodkin alter`: a traced piece, altered as on paper, blended, with its allowance redrawn. */
export function alterCommand(session: Session, finish: (code: ExitCode) => void): Command {
  const command = new Command('alter')
    .description(
      'alter a piece you own, from an outline traced as SVG; without an alteration, show its edges',
    )
    .argument('<svg>', 'the traced piece, with a 50-mm square marked “test square”');
  const [altering, then] = [alteringOptions(), thenOption()];
  const outcome = [...outcomeOptions(), unitsOption(), jsonOption()];
  for (const option of [...readingOptions(), ...altering, then, ...outcome]) command.addOption(option);
  const steps = stepsOf(command, altering, then);
  return command.action(async (file: string, options: AlterOptions) =>
    finish(await alterFile(session, file, options, steps())),
  );
}

async function alterFile(
  session: Session,
  file: string,
  options: AlterOptions,
  steps: readonly StepOptions[],
): Promise<ExitCode> {
  const reader = readerOf(session, options.units);
  const { traced, piece: before, issues: read } = await readOwn(file, options);
  const partner = await readPartner(options);
  const sewn = { seam: options.seam, partner: partner?.length };
  const altered = alter(
    before,
    steps.flatMap((step) => alterationOf(step, sewn) ?? []),
  );
  const { piece, deviation, done } = used(altered, reader.units);
  const slashed = steps.find(({ along }) => along !== undefined)?.along;
  const edge = options.seam ?? slashed?.[0] ?? piece.edges[0]?.name ?? '';
  const seam = partner && used(walkPartner(before, { piece, edge }, partner), reader.units);
  const garment = garmentOf(piece, options);
  const cutLines = cuttingLines(garment, PARALLEL);
  const issues = [
    ...read,
    ...(partner?.issues ?? []),
    ...altered.issues,
    ...checkGarment(garment).issues,
    ...cutReady(garment, cutLines, draftBounds.cutLine),
  ];
  const outcome: AlterOutcome = {
    traced,
    before,
    after: piece,
    done,
    deviation,
    seam,
    issues,
  };
  const result = json(alterResult(outcome));
  if (options.out !== undefined) {
    const drawn = pieceSvgs(garment, cutLines, { date: options.date, units: options.units });
    const printed = await pdfFile(garment, cutLines, options);
    await writeFiles(
      options.out,
      new Map<string, string | Uint8Array>([...drawn, ...printed, ['report.json', result]]),
    );
  }
  if (options.json) await session.write(result);
  else {
    await say(session, alterTables(outcome, reader));
    if (options.out !== undefined) tell(session, `wrote the piece and report.json into ${options.out}\n`);
  }
  sayIssues(session, issues, reader.units);
  return issues.some(({ severity }) => severity === 'error') ? 1 : 0;
}

/** The piece as a PDF, where a paper was named. */
async function pdfFile(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  { paper, date, units }: AlterOptions,
): Promise<readonly (readonly [string, Uint8Array])[]> {
  if (paper === undefined) return [];
  const { pages } = used(printPages(garment, cutLines, used(readPaper(paper)), { date, units }));
  const title = `${garment.name} for ${garment.body}`;
  return [['pattern.pdf', await pdfOf(pages, title, await readFonts())]];
}

/** One piece alone as a garment, to be checked and drawn like any other. */
const garmentOf = (piece: Piece, { wearer }: AlterOptions): Garment => ({
  name: 'own pattern',
  body: wearer,
  pieces: [piece],
  seams: [],
  joins: [],
  girths: [],
  shapes: [],
  notions: [],
  steps: [],
  issues: noIssues,
});

const noIssues: readonly Issue[] = [];
