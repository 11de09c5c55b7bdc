import { Command } from 'commander';
import { evaluate } from '../engine/evaluate.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { sewingPages } from '../engine/render/sewing-sheet/pdf/sewing-pages.ts';
import { sewingSheet } from '../engine/render/sewing-sheet/sewing-sheet.ts';
import type { Unit } from '../engine/text/units.ts';
import { readFonts } from './fonts.ts';
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
import { readBodyFile } from './read-body.ts';
import { readerOf, unitsOption } from './reader.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable, unusable } from './unusable.ts';
import { json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';
import { writtenResult } from './written-result.ts';

interface SewOptions {
  readonly body: string;
  readonly out: string;
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly date?: string;
  readonly json?: true;
  readonly units?: Unit;
}

/** `bodkin sew`: how the garment is sewn, step by step, as a page to print. */
export const sewCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('sew')
    .description('write how a garment is sewn, step by step, with drawings and the figures of one body')
    .argument('<garment>', 'what to sew (see “bodkin list”)')
    .requiredOption('--body <file>', 'measurements, YAML or JSON')
    .requiredOption('--out <folder>', 'where to write; made if it is not there')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(dateOption())
    .addOption(jsonOption())
    .addOption(unitsOption())
    .action(async (name: string, options: SewOptions) => finish(await sew(session, name, options)));

async function sew(session: Session, name: string, options: SewOptions): Promise<ExitCode> {
  const draft = findGarment(session.garments, name);
  const styling = await readStyling(options.styling, options.set);
  const body = await readBodyFile(options.body);
  const date = readDate(options.date);
  const { units } = readerOf(session, options.units, body);
  const evaluated = evaluate(draft, body, styling);
  if (!evaluated.ok) throw new Unusable(evaluated.issues, units);
  const { garment, cutLines, report } = evaluated.value;
  if (!garment.sewing)
    throw unusable('no-sewing-order', 'garment', `There is no sewing order for “${garment.name}”.`);
  const title = `Sewing the ${garment.name} for ${garment.body}`;
  const pdf = await pdfOf(sewingPages(garment, cutLines, { date, units }), title, await readFonts());
  const files = new Map<string, string | Uint8Array>([
    ['sewing.html', sewingSheet(garment, cutLines, { date, units })],
    ['sewing.pdf', pdf],
  ]);
  await writeFiles(options.out, files);
  if (options.json) await session.write(json(writtenResult(report, garment.sewing, files)));
  else {
    await session.write(heading(session, report));
    await say(session, contents(garment.sewing));
    tell(session, `wrote sewing.html and sewing.pdf into ${options.out}\n`);
  }
  sayIssues(session, report.issues, units);
  return report.ok ? 0 : 1;
}

const contents = (steps: readonly { readonly title: string }[]): string =>
  steps.map(({ title }, i) => `${String(i + 1).padStart(3)}. ${title}\n`).join('');
