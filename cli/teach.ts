import { Command } from 'commander';
import { evaluate } from '../engine/evaluate.ts';
import { lessonPages } from '../engine/render/lesson-sheet/lesson-pages.ts';
import { lessonSheet } from '../engine/render/lesson-sheet/lesson-sheet.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
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
import { tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable } from './unusable.ts';
import { json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';
import { writtenResult } from './written-result.ts';

interface TeachOptions {
  readonly body: string;
  readonly out: string;
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly date?: string;
  readonly json?: true;
  readonly units?: Unit;
}

/** `bodkin teach`: how the garment is drawn for one body, step by step, as a lesson to print. */
export const teachCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('teach')
    .description('write how a garment is drawn for one body, step by step, with drawings to scale')
    .argument('<garment>', 'what to draw (see “bodkin list”)')
    .requiredOption('--body <file>', 'measurements, YAML or JSON')
    .requiredOption('--out <folder>', 'where to write; made if it is not there')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(dateOption())
    .addOption(jsonOption())
    .addOption(unitsOption())
    .action(async (name: string, options: TeachOptions) => finish(await teach(session, name, options)));

async function teach(session: Session, name: string, options: TeachOptions): Promise<ExitCode> {
  const draft = findGarment(session.garments, name);
  const styling = await readStyling(options.styling, options.set);
  const body = await readBodyFile(options.body);
  const date = readDate(options.date);
  const { units } = readerOf(session, options.units, body);
  const evaluated = evaluate(draft, body, styling);
  if (!evaluated.ok) throw new Unusable(evaluated.issues, units);
  const { garment, report } = evaluated.value;
  const title = `Drawing the ${garment.name} for ${garment.body}`;
  const pdf = await pdfOf(lessonPages(garment, { date, units }), title, await readFonts());
  const files = new Map<string, string | Uint8Array>([
    ['lesson.html', lessonSheet(garment, { date, units })],
    ['lesson.pdf', pdf],
  ]);
  await writeFiles(options.out, files);
  if (options.json) await session.write(json(writtenResult(report, garment.steps, files)));
  else {
    await session.write(heading(session, report));
    tell(session, `wrote lesson.html and lesson.pdf, ${garment.steps.length} steps, into ${options.out}\n`);
  }
  sayIssues(session, report.issues, units);
  return report.ok ? 0 : 1;
}
