import { Command, Option } from 'commander';
import { withIssues } from '../../engine/checks/with-issues.ts';
import { type EarlierOutlines, earlierOutlines } from '../../engine/comparison/earlier-outlines.ts';
import { draftedNow } from '../../engine/comparison/known-draft.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import type { Issue } from '../../engine/issue.ts';
import { materialsFor } from '../../engine/materials/materials.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { stepText } from '../../engine/pattern/step-text.ts';
import { provenCuttingFile } from '../../engine/proven-cutting-file.ts';
import { provenSheet } from '../../engine/proven-sheet.ts';
import { counted } from '../../engine/text/counted.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { alsoOption, alsoResult, alsoWords } from '../files/also.ts';
import { type Also, alsoWritten } from '../files/cutting-files.ts';
import { leftFromEarlier, ofDraft } from '../files/left-from-earlier.ts';
import { writeFiles } from '../files/write-files.ts';
import {
  askedGarment,
  type DraftedGarment,
  draftedGarment,
  type GarmentOptions,
  refuseUntrue,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { cutListResult, leastLines, materialsResult } from '../garment/materials-words.ts';
import { summary } from '../garment/summary.ts';
import { beforeWords, readEarlier } from '../input/earlier-draft.ts';
import { dateOption } from '../input/options.ts';
import { bodyIn } from '../input/read-body.ts';
import { unusable } from '../input/unusable.ts';
import { answer } from '../output/answer.ts';
import type { Reader } from '../output/reader.ts';
import { say, tell } from '../output/say.ts';
import { json, nothingWalked, walkResult } from '../output/walk-result.ts';
import type { DraftedResult } from '../results/construction.ts';
import type { ExitCode, Session } from '../session.ts';
import { draftBodies } from './draft-bodies.ts';
import { finishedPicture } from './finished-picture.ts';
import { reasonResult, stepsResult } from './steps-result.ts';
import { reasonLines, reasonsFor } from './why.ts';

interface DraftOptions extends GarmentOptions {
  readonly bodies?: string;
  readonly out?: string;
  readonly steps?: true;
  readonly why?: string;
  readonly before?: string;
  readonly also?: readonly Also[];
  readonly finished?: true;
}

/** `bodkin draft`: pieces, sheet and report for one body, written whole or not at all. */
export const draftCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('draft')
      .description('draft a garment for one body and write its pieces, a sheet of them all, and a report')
      .argument('<garment>', 'what to draft (see “bodkin list”)')
      .option('--body <file>', 'measurements, YAML or JSON')
      .addOption(
        new Option(
          '--bodies <file>',
          'many bodies, one JSON object a line or one row of a CSV table each; each gets a folder of its own',
        ).conflicts(['body', 'steps', 'why', 'before', 'finished']),
      )
      .option(
        '--out <folder>',
        'where to write; made if it is not there (not needed for --steps or --why alone)',
      )
      .addOption(alsoOption())
      .addOption(dateOption())
      .option('--finished', 'also draw it as it is worn, in black line: finished.svg, front and back')
      .option('--steps', 'print the construction, step by step, with the numbers of this body')
      .option('--why <step>', 'print what the step of this title rests on, down to the tape measure')
      .option(
        '--before <file>',
        `${beforeWords}, or earlier measurements: draw its outlines under the new ones`,
      ),
  ).action(async (name: string, options: DraftOptions) => finish(await draft(session, name, options)));

async function draft(session: Session, name: string, options: DraftOptions): Promise<ExitCode> {
  const asked = await askedGarment(session, name, options);
  const out = folderFor(options);
  if (options.bodies !== undefined && out !== undefined)
    return draftBodies(session, asked, options.bodies, { ...options, out });
  const refused = async (issues: readonly Issue[]): Promise<void> => {
    if (options.json) await session.write(json(nothingWalked(name, issues)));
  };
  const drafted = await draftedGarment(session, asked, options, refused);
  const { garment, styling, reader } = drafted;
  const { units } = reader;
  const earlier = await outlinesBefore(options.before, drafted);
  const print = { date: asked.date, units, notches: notchesOf(styling) };
  const {
    sheet,
    pieces: svgs,
    report: ofSheet,
  } = provenSheet(drafted, { ...print, ...(earlier && { earlier: earlier.outlines.on }) });
  const reasons = options.why === undefined ? [] : reasonsFor(garment.steps, options.why);
  const also = alsoWritten(options.also, 'cutting', (flavour) => provenCuttingFile(drafted, flavour, print));
  const report = withIssues(ofSheet, also.issues);
  await refuseUntrue(drafted, report, (other) => provenSheet(other, print).report.ok, refused);
  const walked = walkResult(report, drafted);
  const materials = materialsFor(garment, drafted.cutLines, units, 'least');
  const pieces = svgs();
  const finished = options.finished ? await finishedPicture(session, drafted) : new Map<string, string>();
  if (out !== undefined)
    await writeFiles(
      out,
      new Map([...pieces, ...also.files, ...finished, ['sheet.svg', sheet], ['report.json', json(walked)]]),
    );
  const left =
    out === undefined ? [] : await leftFromEarlier(out, ofDraft, [...pieces.keys(), ...also.files.keys()]);
  if (!options.json) {
    const known = { ...drafted, choices: asked.draft.choices, units };
    if (options.steps) await say(session, construction(garment, reader));
    for (const reason of reasons) await say(session, `${reasonLines(reason, known)}\n`, 2);
  }
  return answer(session, options.json, {
    report,
    reader,
    result: (): DraftedResult => ({
      ...walked,
      cutList: cutListResult(garment),
      materials: materialsResult(materials),
      ...alsoResult(also),
      ...(options.steps ? { steps: stepsResult(garment.steps) } : {}),
      ...(options.why === undefined ? {} : { why: reasons.map(reasonResult) }),
    }),
    words: async () => {
      if (out === undefined) return;
      await say(session, summary({ ...drafted, report }, reader));
      await say(session, `\n${leastLines(garment, materials, reader)}`);
      tell(
        session,
        `wrote ${counted(pieces.size, 'piece')}${alsoWords(also)}, ${finished.size > 0 ? 'finished.svg, ' : ''}sheet.svg and report.json into ${out}\n`,
      );
    },
    remarks: [...(earlier ? [drawnWords(earlier.outlines)] : []), ...left],
    issues: earlier?.issues,
  });
}

/** Where to write; nowhere, where only the construction is to be read. Throws `Unusable` where files are asked for and no folder. */
function folderFor({ out, steps, why, bodies, also, finished, before }: DraftOptions): string | undefined {
  const reads = steps === true || why !== undefined;
  const writes = [bodies, also, finished, before].some((asked) => asked !== undefined);
  if (out === undefined && (writes || !reads))
    throw unusable(
      'option-missing',
      '--out',
      'Say which folder to write into: --out DIR. Without one, --steps and --why print the construction alone.',
    );
  return out;
}

/** The stitching lines of the draft that `--before` names, laid on the new pieces, and what its reading had to say. */
async function outlinesBefore(
  before: string | undefined,
  { garment, forAnother }: DraftedGarment,
): Promise<{ readonly outlines: EarlierOutlines; readonly issues: readonly Issue[] } | undefined> {
  if (before === undefined) return undefined;
  const read = await readEarlier(before);
  const { sheet } =
    read.kind === 'written' ? read.draft : draftedNow(await forAnother(bodyIn(before, read.data)));
  if (!sheet)
    throw unusable(
      'no-outlines',
      before,
      `${before} holds no outlines: say sheet.svg, or lay it beside its report.`,
    );
  return {
    outlines: earlierOutlines(sheet, garment.pieces),
    issues: read.kind === 'written' ? read.issues : [],
  };
}

/** What was drawn of an earlier draft, and what was not. */
function drawnWords({ on, fresh, gone }: EarlierOutlines): string {
  const named = (what: string, names: readonly string[]): string =>
    names.length > 0 ? `; ${what}: ${names.join(', ')}` : '';
  return `drew the stitching line before, grey, under ${counted(on.size, 'piece')}${named('new', fresh)}${named('no longer there, not drawn', gone)}\n`;
}

/** The construction: what was done, with which numbers, on whose word, heading by heading. */
const construction = ({ steps }: Garment, { units }: Reader): string =>
  steps
    .map((step, i) => {
      const { number, heading, title, source } = step;
      const begins = heading !== undefined && heading !== steps[i - 1]?.heading;
      const line = `${String(number).padStart(3)}. ${withLengthsIn(title, units)}: ${stepText(step, units)} [${withLengthsIn(source, units)}]\n`;
      return begins ? `${i === 0 ? '' : '\n'}${heading}\n${line}` : line;
    })
    .join('');
