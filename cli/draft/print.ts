import { basename, dirname } from 'node:path';
import { Command } from 'commander';
import { withIssues } from '../../engine/checks/with-issues.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import { provenCuttingFile } from '../../engine/proven-cutting-file.ts';
import { pdfFaults } from '../../engine/proven-pdf.ts';
import { provenSheet } from '../../engine/proven-sheet.ts';
import { paperWords, readPaper } from '../../engine/render/tiles/papers.ts';
import { alsoOption, alsoResult, alsoWords } from '../files/also.ts';
import { type Also, alsoWritten } from '../files/cutting-files.ts';
import { readFonts } from '../files/fonts.ts';
import { leftFromEarlier, ofPrint } from '../files/left-from-earlier.ts';
import { patternPdf } from '../files/pattern-pdf.ts';
import { writeFiles } from '../files/write-files.ts';
import {
  askedGarment,
  draftedGarment,
  type GarmentOptions,
  refuseUntrue,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { dateOption } from '../input/options.ts';
import { used } from '../input/used.ts';
import { answer } from '../output/answer.ts';
import { say, tell } from '../output/say.ts';
import type { ExitCode, Session } from '../session.ts';
import { printResult, printSummary } from './print-summary.ts';

interface PrintCommandOptions extends GarmentOptions {
  readonly paper: string;
  readonly out: string;
  readonly also?: readonly Also[];
}

const help = `
The PDF is drawn at 1:1. Print it at 100 %, “actual size”, never fitted to the page.

On sheets the pattern is cut into tiles, named by row and column (B3), behind a first page with the map of the tiles, a 50-mm and a 2-in test square, and the pieces to cut. Cut each tile along its dotted line on the left and at the top, lay it over the strip of the tile before it so that the crossing marks meet, and glue. Tiles without any line are left out. What fits on one sheet, a roll or a projector is printed whole. A roll has marks every 500 mm at its edges, or every 20 in, to measure its length by. A projector’s page has a grid of 50-mm squares to set the projector by, or of 2-in squares for inches.

  bodkin print dress --body leading-lady.yaml --paper a4 --out dress.pdf
  bodkin print dress --body leading-lady.yaml --paper roll:914 --out plotter.pdf --also dxf`;

/** `bodkin print`: a garment for one body as a PDF, written whole or not at all. */
export const printCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('print')
      .description('draft a garment for one body and write it as a PDF to print at 1:1, in tiles or whole')
      .argument('<garment>', 'what to draft (see “bodkin list”)')
      .requiredOption('--body <file>', 'measurements, YAML or JSON')
      .requiredOption('--paper <paper>', paperWords)
      .requiredOption('--out <file>', 'the PDF to write; its folder is made if it is not there')
      .addOption(alsoOption())
      .addOption(dateOption()),
  )
    .addHelpText('after', help)
    .action(async (name: string, options: PrintCommandOptions) =>
      finish(await print(session, name, options)),
    );

async function print(session: Session, name: string, asked: PrintCommandOptions): Promise<ExitCode> {
  const paper = used(readPaper(asked.paper), asked.units);
  const garmentAsked = await askedGarment(session, name, asked);
  const drafted = await draftedGarment(session, garmentAsked, asked);
  const { styling, reader } = drafted;
  const options = { date: garmentAsked.date, units: reader.units, notches: notchesOf(styling) };
  const { printed, pdf } = used(await patternPdf(drafted, paper, options, await readFonts()), reader.units);
  const file = basename(asked.out);
  const bare = file.replace(/\.pdf$/i, '');
  const also = alsoWritten(asked.also, bare, (flavour) => provenCuttingFile(drafted, flavour, options));
  const { report: ofSheet } = provenSheet(drafted, options);
  const report = withIssues(ofSheet, [...pdfFaults(drafted, pdf), ...also.issues]);
  await refuseUntrue(drafted, report, (other) => provenSheet(other, options).report.ok);
  const folder = dirname(asked.out);
  await writeFiles(folder, new Map<string, string | Uint8Array>([[file, pdf], ...also.files]));
  const left = await leftFromEarlier(folder, ofPrint(bare), also.files.keys());
  return answer(session, asked.json, {
    report,
    reader,
    result: () => ({ ...printResult(report, paper, printed), ...alsoResult(also) }),
    words: async () => {
      await say(session, printSummary(paper, printed, reader));
      tell(session, `wrote ${asked.out}${alsoWords(also)}\n`);
    },
    remarks: left,
  });
}
