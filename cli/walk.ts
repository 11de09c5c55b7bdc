import { Command, Option } from 'commander';
import type { Report } from '../engine/checks/report.ts';
import { type Comparison, compareDrafts } from '../engine/comparison/compare.ts';
import { draftedNow, type KnownDraft } from '../engine/comparison/known-draft.ts';
import { sheetDraft } from '../engine/comparison/sheet-draft.ts';
import { type Evaluation, evaluate } from '../engine/evaluate.ts';
import type { Issue } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import { walkSheet } from '../engine/reading/walk-sheet.ts';
import type { Unit } from '../engine/text/units.ts';
import { comparisonTables } from './comparison-table.ts';
import { beforeWords, readEarlier } from './earlier-draft.ts';
import { heading } from './heading.ts';
import { findGarment, jsonOption, readStyling, setOption, stylingOption, workersOption } from './options.ts';
import { bodyIn, readBodyFile } from './read-body.ts';
import { readTextFile } from './read-data.ts';
import { type Reader, readerOf, unitsOption } from './reader.ts';
import type { WalkedResult } from './results/walked.ts';
import { say } from './say.ts';
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
  readonly lengths?: true;
  readonly bands?: true;
  readonly before?: string;
  readonly units?: Unit;
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
        'many bodies, one JSON object a line or one row of a CSV table each; prints one JSON line each',
      ).conflicts('file'),
    )
    .addOption(new Option('--file <svg>', 'a written sheet.svg, walked again from its paths alone'))
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(workersOption('threads for --bodies', 1))
    .addOption(
      new Option(
        '--lengths',
        'with --bodies: tell finished girths and the length of every edge on each line too',
      ).conflicts(['body', 'file']),
    )
    .addOption(
      new Option(
        '--bands',
        'print every shape beside the band a pattern cutter expects, not only those outside it',
      ).conflicts(['bodies', 'json']),
    )
    .addOption(
      new Option(
        '--before <file>',
        `${beforeWords}, or earlier measurements: also print what changed since, piece by piece`,
      ).conflicts('bodies'),
    )
    .addOption(unitsOption())
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
  if (options.bodies !== undefined) return walkBodies(session, draft, styling, options.bodies, options);
  if (options.body === undefined)
    throw unusable('body-missing', '--body', 'Say whose measurements to use: --body FILE, or --bodies FILE.');
  const data = await readBodyFile(options.body);
  const reader = readerOf(session, options.units, data);
  const drafted = (body: unknown) => evaluated(session, draft, styling, body, options, reader);
  const now = await drafted(data);
  const earlier = await earlierThan(options, drafted);
  return show(session, now.report, options, reader, now, earlier && compared(earlier, draftedNow(now)));
}

async function evaluated(
  session: Session,
  draft: Draft,
  styling: Record<string, unknown>,
  body: unknown,
  options: WalkOptions,
  { units }: Reader,
): Promise<Evaluation> {
  const made = evaluate(draft, body, styling);
  if (made.ok) return made.value;
  if (options.json) await session.write(json(nothingWalked(draft.name, made.issues)));
  throw new Unusable(made.issues, units);
}

async function walkFile(session: Session, file: string, options: WalkOptions): Promise<ExitCode> {
  const reader = readerOf(session, options.units);
  const text = await readTextFile(file, largestSheet);
  const walked = walkSheet(text);
  if (!walked.ok) {
    if (options.json) await session.write(json(nothingWalked('', walked.issues)));
    throw new Unusable(walked.issues, reader.units);
  }
  const earlier = await earlierThan(options);
  const now = sheetDraft(text);
  const since = earlier && now.ok ? compared(earlier, now.value) : undefined;
  return show(session, walked.value, options, reader, undefined, since);
}

/** An earlier draft, and what there is to say of where it was read. */
interface EarlierDraft {
  readonly draft: KnownDraft;
  readonly issues: readonly Issue[];
}

/** The draft that `--before` names; earlier measurements are drafted, where there is a garment to draft. */
async function earlierThan(
  { before }: WalkOptions,
  draft?: (data: unknown) => Promise<Evaluation>,
): Promise<EarlierDraft | undefined> {
  if (before === undefined) return undefined;
  const earlier = await readEarlier(before);
  if (earlier.kind === 'written') return earlier;
  if (!draft)
    throw unusable(
      'before-not-drafted',
      '--before',
      `${before} holds measurements. With --file say an earlier sheet.svg or report.json, for nothing is drafted.`,
    );
  const made = await draft(bodyIn(before, earlier.data));
  return { draft: draftedNow(made), issues: [] };
}

/** A comparison with what there is to say of where the earlier draft was read. */
interface Since {
  readonly comparison: Comparison;
  readonly issues: readonly Issue[];
}

const compared = ({ draft, issues }: EarlierDraft, now: KnownDraft): Since => ({
  comparison: compareDrafts(draft, now),
  issues,
});

async function show(
  session: Session,
  report: Report,
  { json: asJson, bands, before = '' }: WalkOptions,
  reader: Reader,
  made?: Evaluation,
  since?: Since,
): Promise<ExitCode> {
  if (asJson) {
    const comparison = since ? { comparison: since.comparison } : {};
    const result: WalkedResult = { ...walkResult(report, made), ...comparison };
    await session.write(json(result));
  } else {
    await session.write(heading(session, report));
    await say(session, walkTables(report, bands ? 'all' : 'outside', reader));
    if (since) await say(session, `\n${comparisonTables(since.comparison, before, reader)}`);
  }
  sayIssues(session, [...report.issues, ...(since?.issues ?? [])], reader.units);
  return report.ok ? 0 : 1;
}
