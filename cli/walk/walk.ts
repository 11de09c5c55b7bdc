import { Command, Option } from 'commander';
import { walkSheet } from '../../drafts/walk-sheet.ts';
import type { Report } from '../../engine/checks/report.ts';
import { type Comparison, compareDrafts } from '../../engine/comparison/compare.ts';
import { draftedNow, type KnownDraft } from '../../engine/comparison/known-draft.ts';
import { sheetDraft } from '../../engine/comparison/sheet-draft.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import type { Issue } from '../../engine/issue.ts';
import {
  askedGarment,
  checkedGarment,
  type GarmentOptions,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { beforeWords, readEarlier } from '../input/earlier-draft.ts';
import { workersOption } from '../input/options.ts';
import { bodyIn } from '../input/read-body.ts';
import { largestDocument, readTextFile } from '../input/read-data.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { walkBodies } from '../many-bodies/walk-bodies.ts';
import { answer } from '../output/answer.ts';
import { type Reader, readerOf } from '../output/reader.ts';
import { say } from '../output/say.ts';
import { json, nothingWalked, walkResult } from '../output/walk-result.ts';
import type { WalkedResult } from '../results/walked.ts';
import type { ExitCode, Session } from '../session.ts';
import { comparisonTables } from './comparison-table.ts';
import { walkTables } from './walk-tables.ts';

interface WalkOptions extends GarmentOptions {
  readonly bodies?: string;
  readonly file?: string;
  readonly workers: number;
  readonly lengths?: true;
  readonly bands?: true;
  readonly before?: string;
}

/** `bodkin walk`: every check, seam by seam, on a draft or on a written sheet. */
export const walkCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('walk')
      .description(
        'walk every seam, true every join and close every girth of a garment or of a written sheet',
      )
      .argument('[garment]', 'what to draft and walk (see “bodkin list”)')
      .addOption(new Option('--body <file>', 'measurements, YAML or JSON').conflicts(['bodies', 'file']))
      .addOption(
        new Option(
          '--bodies <file>',
          'many bodies, one JSON object a line or one row of a CSV table each; prints one JSON line each',
        ).conflicts('file'),
      )
      .addOption(new Option('--file <svg>', 'a written sheet.svg, walked again from its paths alone'))
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
      ),
  ).action(async (name: string | undefined, options: WalkOptions) =>
    finish(await walk(session, name, options)),
  );

async function walk(session: Session, name: string | undefined, options: WalkOptions): Promise<ExitCode> {
  if (options.file !== undefined) return walkFile(session, options.file, options);
  if (name === undefined)
    throw unusable('garment-missing', 'garment', 'Say which garment to walk, or --file SVG.');
  const asked = await askedGarment(session, name, options);
  if (options.bodies !== undefined) return walkBodies(session, asked, options.bodies, options);
  const now = await checkedGarment(session, asked, options, async (issues) => {
    if (options.json) await session.write(json(nothingWalked(name, issues)));
  });
  const earlier = await earlierThan(options, now.forAnother);
  return show(session, now.report, options, now.reader, now, earlier && compared(earlier, draftedNow(now)));
}

async function walkFile(session: Session, file: string, options: WalkOptions): Promise<ExitCode> {
  const text = await readTextFile(file, largestDocument);
  const walked = walkSheet(text, session.garments);
  const reader = readerOf(session, options.units, walked.ok ? walked.value : undefined);
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
  return answer(session, asJson, {
    report,
    reader,
    issues: since?.issues,
    result: (): WalkedResult => ({
      ...walkResult(report, made),
      ...(since ? { comparison: since.comparison } : {}),
    }),
    words: async () => {
      await say(session, walkTables(report, bands ? 'all' : 'outside', reader));
      if (since) await say(session, `\n${comparisonTables(since.comparison, before, reader)}`);
    },
  });
}
