import { Command, InvalidArgumentError, Option } from 'commander';
import { movesBetween, type PieceMove } from '../engine/checks/moves.ts';
import type { Report } from '../engine/checks/report.ts';
import { type Evaluation, evaluate } from '../engine/evaluate.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { Styling } from '../engine/pattern/styling.ts';
import { walkSheet } from '../engine/reading/walk-sheet.ts';
import { heading } from './heading.ts';
import { movesTable } from './moves-table.ts';
import { findGarment, jsonOption, readStyling, setOption, stylingOption } from './options.ts';
import { plain } from './plain.ts';
import { readBodyFile } from './read-body.ts';
import { readTextFile } from './read-data.ts';
import type { WalkedResult } from './results/report.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable, unusable } from './unusable.ts';
import { walkBodies } from './walk-bodies.ts';
import { json, nothingWalked, walkResult } from './walk-result.ts';
import { walkTables } from './walk-tables.ts';

interface WalkOptions {
  readonly body?: string;
  readonly bodies?: string;
  readonly file?: string;
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly workers: number;
  readonly bands?: true;
  readonly before?: string;
  readonly json?: true;
}

/** A sheet larger than this (bytes) was not written here. */
const largestSheet = 50_000_000;

/** `bodkin walk`: every check, seam by seam, on a draft or on a written sheet. */
export const walkCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('walk')
    .description('walk every seam, true every join and close every girth of a garment or of a written sheet')
    .argument('[garment]', 'what to draft and walk (see “bodkin list”)')
    .addOption(new Option('--body <file>', 'measurements, YAML or JSON').conflicts(['bodies', 'file']))
    .addOption(
      new Option(
        '--bodies <file>',
        'many bodies, one JSON object a line; prints one JSON line each',
      ).conflicts('file'),
    )
    .addOption(new Option('--file <svg>', 'a written sheet.svg, walked again from its paths alone'))
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(new Option('--workers <count>', 'threads for --bodies').argParser(threads).default(1))
    .addOption(
      new Option(
        '--bands',
        'print every shape beside the band a pattern cutter expects, not only those outside it',
      ).conflicts(['bodies', 'json']),
    )
    .addOption(
      new Option(
        '--before <file>',
        'earlier measurements, or the same before the fitting: also print what moved since, edge by edge',
      ).conflicts(['bodies', 'file']),
    )
    .addOption(jsonOption())
    .action(async (name: string | undefined, options: WalkOptions) =>
      finish(await walk(session, name, options)),
    );

async function walk(session: Session, name: string | undefined, options: WalkOptions): Promise<ExitCode> {
  if (options.file !== undefined) return walkFile(session, options.file, options);
  if (name === undefined)
    throw unusable('garment-missing', 'garment', 'Say which garment to walk, or --file SVG.');
  const draft = findGarment(session.garments, name);
  const styling = await readStyling(options.styling, options.set);
  if (options.bodies !== undefined)
    return walkBodies(session, draft, styling, options.bodies, options.workers);
  if (options.body === undefined)
    throw unusable('body-missing', '--body', 'Say whose measurements to use: --body FILE, or --bodies FILE.');
  const now = await evaluateFile(session, draft, styling, options.body, options);
  const { report, styling: resolved, garment } = now;
  if (options.before === undefined) return show(session, report, resolved, options);
  const before = await evaluateFile(session, draft, styling, options.before, options);
  const moves = movesBetween(before.garment, garment);
  return show(session, report, resolved, options, moves);
}

async function evaluateFile(
  session: Session,
  draft: Draft,
  styling: Record<string, unknown>,
  file: string,
  options: WalkOptions,
): Promise<Evaluation> {
  const evaluated = evaluate(draft, await readBodyFile(file), styling);
  if (evaluated.ok) return evaluated.value;
  if (options.json) await session.write(json(nothingWalked(draft.name, evaluated.issues)));
  throw new Unusable(evaluated.issues);
}

async function walkFile(session: Session, file: string, options: WalkOptions): Promise<ExitCode> {
  const walked = walkSheet(await readTextFile(file, largestSheet));
  if (!walked.ok) {
    if (options.json) await session.write(json(nothingWalked('', walked.issues)));
    throw new Unusable(walked.issues);
  }
  return show(session, walked.value, {}, options);
}

async function show(
  session: Session,
  report: Report,
  styling: Styling,
  { json: asJson, bands, before = '' }: WalkOptions,
  moves?: readonly PieceMove[],
): Promise<ExitCode> {
  const result: WalkedResult = { ...walkResult(report, styling), ...(moves ? { moves } : {}) };
  if (asJson) await session.write(json(result));
  else await session.write(heading(session, report) + plain(walkTables(report, bands ? 'all' : 'outside')));
  if (moves && !asJson) await session.write(`\n${plain(movesTable(moves, before))}`);
  sayIssues(session, report.issues);
  return report.ok ? 0 : 1;
}

/** More threads than any machine has cores is a slip of the finger. */
const mostThreads = 64;

function threads(text: string): number {
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > mostThreads)
    throw new InvalidArgumentError(`It should be a whole number from 1 to ${mostThreads}.`);
  return count;
}
