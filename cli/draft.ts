import { Command, Option } from 'commander';
import { type EarlierOutlines, earlierOutlines } from '../engine/comparison/earlier-outlines.ts';
import { draftedNow } from '../engine/comparison/known-draft.ts';
import { cuttingFile } from '../engine/cutting-file/cutting-file.ts';
import { type Evaluation, evaluate } from '../engine/evaluate.ts';
import { notchesOf } from '../engine/finishing/notches.ts';
import type { Issue, Result } from '../engine/issue.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { stepText } from '../engine/pattern/step-text.ts';
import { provenSheet } from '../engine/proven-sheet.ts';
import type { Unit } from '../engine/text/units.ts';
import { withLengthsIn } from '../engine/text/with-lengths-in.ts';
import { type Also, alsoOption, alsoResult, alsoWords, alsoWritten } from './also.ts';
import { draftBodies } from './draft-bodies.ts';
import { beforeWords, readEarlier } from './earlier-draft.ts';
import { earlierPieces } from './earlier-pieces.ts';
import { heading } from './heading.ts';
import {
  dateOption,
  findGarment,
  jsonOption,
  readDate,
  readStyling,
  setOption,
  stylingOption,
} from './options.ts';
import { bodyIn, readBodyFile } from './read-body.ts';
import { type Reader, readerOf, unitsOption } from './reader.ts';
import type { DraftedResult } from './results/construction.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { reasonResult, stepsResult } from './steps-result.ts';
import { summary } from './summary.ts';
import { Unusable, unusable } from './unusable.ts';
import { json, nothingWalked, walkResult } from './walk-result.ts';
import { reasonLines, reasonsFor } from './why.ts';
import { writeFiles } from './write-files.ts';

interface DraftOptions {
  readonly body?: string;
  readonly bodies?: string;
  readonly out: string;
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly date?: string;
  readonly steps?: true;
  readonly why?: string;
  readonly units?: Unit;
  readonly before?: string;
  readonly also?: readonly Also[];
  readonly json?: true;
}

/** `bodkin draft`: pieces, sheet and report for one body, written whole or not at all. */
export const draftCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('draft')
    .description('draft a garment for one body and write its pieces, a sheet of them all, and a report')
    .argument('<garment>', 'what to draft (see “bodkin list”)')
    .option('--body <file>', 'measurements, YAML or JSON')
    .addOption(
      new Option(
        '--bodies <file>',
        'many bodies, one JSON object a line or one row of a CSV table each; each gets a folder of its own',
      ).conflicts(['body', 'steps', 'why', 'before']),
    )
    .requiredOption('--out <folder>', 'where to write; made if it is not there')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(dateOption())
    .option('--steps', 'print the construction, step by step, with the numbers of this body')
    .option('--why <step>', 'print what the step of this title rests on, down to the tape measure')
    .option(
      '--before <file>',
      `${beforeWords}, or earlier measurements: draw its outlines under the new ones`,
    )
    .addOption(alsoOption())
    .addOption(unitsOption())
    .addOption(jsonOption())
    .action(async (name: string, options: DraftOptions) => finish(await draft(session, name, options)));

async function draft(session: Session, name: string, options: DraftOptions): Promise<ExitCode> {
  const garmentDraft = findGarment(session.garments, name);
  const styling = await readStyling(options.styling, options.set);
  const date = readDate(options.date);
  if (options.bodies !== undefined)
    return draftBodies(session, garmentDraft, styling, options.bodies, { ...options, date });
  if (options.body === undefined)
    throw unusable('body-missing', '--body', 'Say whose measurements to use: --body FILE, or --bodies FILE.');
  const body = await readBodyFile(options.body);
  const reader = readerOf(session, options.units, body);
  const { units } = reader;
  const evaluated = evaluate(garmentDraft, body, styling);
  if (!evaluated.ok) {
    if (options.json) await session.write(json(nothingWalked(name, evaluated.issues)));
    throw new Unusable(evaluated.issues, units);
  }
  const { garment } = evaluated.value;
  const earlier = await outlinesBefore(
    options.before,
    evaluated.value,
    (data) => evaluate(garmentDraft, data, styling),
    units,
  );
  const print = {
    date,
    units,
    notches: notchesOf(evaluated.value.styling),
    ...(earlier && { earlier: earlier.outlines.on }),
  };
  const { sheet, pieces: svgs, report } = provenSheet(evaluated.value, print);
  const reasons = options.why === undefined ? [] : reasonsFor(garment.steps, options.why);
  const walked = walkResult(report, evaluated.value);
  const pieces = svgs();
  const also = alsoWritten(options.also, 'cutting', (flavour) =>
    cuttingFile(evaluated.value, flavour, print),
  );
  await writeFiles(
    options.out,
    new Map([...pieces, ...also, ['sheet.svg', sheet], ['report.json', json(walked)]]),
  );
  const left = await earlierPieces(options.out, [...pieces.keys(), ...also.keys()]);
  if (options.json) {
    const steps = options.steps ? { steps: stepsResult(garment.steps) } : {};
    const why = options.why === undefined ? {} : { why: reasons.map(reasonResult) };
    const result: DraftedResult = { ...walked, ...alsoResult(also), ...steps, ...why };
    await session.write(json(result));
  } else {
    const known = { ...evaluated.value, choices: garmentDraft.choices, units };
    if (options.steps) await say(session, construction(garment, reader));
    for (const reason of reasons) await say(session, `${reasonLines(reason, known)}\n`, 2);
    await session.write(heading(session, report));
    await say(session, summary({ ...evaluated.value, report }, reader));
    tell(
      session,
      `wrote ${pieces.size} pieces${alsoWords(also)}, sheet.svg and report.json into ${options.out}\n`,
    );
  }
  if (earlier) tell(session, drawnWords(earlier.outlines));
  if (left.length > 0)
    tell(session, `note: not of this draft, left from an earlier one: ${left.join(', ')}\n`, 2);
  sayIssues(session, [...report.issues, ...(earlier?.issues ?? [])], units);
  return report.ok ? 0 : 1;
}

/** The stitching lines of the draft that `--before` names, laid on the new pieces, and what its reading had to say. */
async function outlinesBefore(
  before: string | undefined,
  { garment }: Evaluation,
  drafted: (body: unknown) => Result<Evaluation>,
  units: Unit,
): Promise<{ readonly outlines: EarlierOutlines; readonly issues: readonly Issue[] } | undefined> {
  if (before === undefined) return undefined;
  const read = await readEarlier(before);
  const made = read.kind === 'measurements' ? drafted(bodyIn(before, read.data)) : undefined;
  if (made && !made.ok) throw new Unusable(made.issues, units);
  const { sheet } = made ? draftedNow(made.value) : read.kind === 'written' ? read.draft : {};
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
  return `drew the stitching line before, grey, under ${on.size} pieces${named('new', fresh)}${named('no longer there, not drawn', gone)}\n`;
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
