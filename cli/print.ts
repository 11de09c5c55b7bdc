import { basename, dirname } from 'node:path';
import { Command } from 'commander';
import { cuttingFile } from '../engine/cutting-file/cutting-file.ts';
import { evaluate } from '../engine/evaluate.ts';
import { notchesOf } from '../engine/finishing/notches.ts';
import { provenSheet } from '../engine/proven-sheet.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { paperWords, readPaper } from '../engine/render/tiles/papers.ts';
import { printPages } from '../engine/render/tiles/print-pages.ts';
import type { Unit } from '../engine/text/units.ts';
import { type Also, alsoOption, alsoResult, alsoWords, alsoWritten } from './also.ts';
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
import { printResult, printSummary } from './print-summary.ts';
import { readBodyFile } from './read-body.ts';
import { readerOf, unitsOption } from './reader.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable } from './unusable.ts';
import { json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';

interface PrintCommandOptions {
  readonly body: string;
  readonly paper: string;
  readonly out: string;
  readonly styling?: string;
  readonly set?: readonly string[];
  readonly date?: string;
  readonly units?: Unit;
  readonly also?: readonly Also[];
  readonly json?: true;
}

const help = `
The PDF is drawn at 1:1. Print it at 100 %, “actual size”, never fitted to the page.

On sheets the pattern is cut into tiles, named by row and column (B3), behind a first page with the map of the tiles, a 50-mm and a 2-in test square, and the pieces to cut. Cut each tile along its dotted line on the left and at the top, lay it over the strip of the tile before it so that the crossing marks meet, and glue. Tiles without any line are left out. What fits on one sheet, a roll or a projector is printed whole. A projector’s page has a grid of 50-mm squares to set the projector by, or of 2-in squares for inches.

  bodkin print dress --body leading-lady.yaml --paper a4 --out dress.pdf
  bodkin print dress --body leading-lady.yaml --paper roll:914 --out plotter.pdf`;

/** `bodkin print`: a garment for one body as a PDF, written whole or not at all. */
export const printCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('print')
    .description('draft a garment for one body and write it as a PDF to print at 1:1, in tiles or whole')
    .argument('<garment>', 'what to draft (see “bodkin list”)')
    .requiredOption('--body <file>', 'measurements, YAML or JSON')
    .requiredOption('--paper <paper>', paperWords)
    .requiredOption('--out <file>', 'the PDF to write; its folder is made if it is not there')
    .addOption(stylingOption())
    .addOption(setOption())
    .addOption(dateOption())
    .addOption(alsoOption())
    .addOption(unitsOption())
    .addOption(jsonOption())
    .addHelpText('after', help)
    .action(async (name: string, options: PrintCommandOptions) =>
      finish(await print(session, name, options)),
    );

async function print(session: Session, name: string, asked: PrintCommandOptions): Promise<ExitCode> {
  const garmentDraft = findGarment(session.garments, name);
  const paper = readPaper(asked.paper);
  if (!paper.ok) throw new Unusable(paper.issues, asked.units);
  const styling = await readStyling(asked.styling, asked.set);
  const body = await readBodyFile(asked.body);
  const date = readDate(asked.date);
  const reader = readerOf(session, asked.units, body);
  const { units } = reader;
  const evaluated = evaluate(garmentDraft, body, styling);
  if (!evaluated.ok) throw new Unusable(evaluated.issues, units);
  const { garment, cutLines } = evaluated.value;
  const options = { date, units, notches: notchesOf(evaluated.value.styling) };
  const { report } = provenSheet(evaluated.value, options);
  const printed = printPages(garment, cutLines, paper.value, options);
  if (!printed.ok) throw new Unusable(printed.issues, units);
  const title = `${garment.name} for ${garment.body}`;
  const pdf = await pdfOf(printed.value.pages, title, await readFonts());
  const file = basename(asked.out);
  const also = alsoWritten(asked.also, file.replace(/\.pdf$/i, ''), (flavour) =>
    cuttingFile(evaluated.value, flavour, options),
  );
  await writeFiles(dirname(asked.out), new Map<string, string | Uint8Array>([[file, pdf], ...also]));
  if (asked.json)
    await session.write(json({ ...printResult(report, paper.value, printed.value), ...alsoResult(also) }));
  else {
    await session.write(heading(session, report));
    await say(session, printSummary(paper.value, printed.value, reader));
    tell(session, `wrote ${asked.out}${alsoWords(also)}\n`);
  }
  sayIssues(session, report.issues, units);
  return report.ok ? 0 : 1;
}
