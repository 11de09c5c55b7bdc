import {
  type Evaluation,
  notchesOf,
  onlyTrue,
  type PrintOptions,
  pdfFaults,
  pdfOf,
  provenCuttingFile,
  provenSheet,
  readPaper,
} from '../../../drafts/index.ts';
import { alsoWritten } from '../../files/cutting-files.ts';
import { patternPdf } from '../../files/pattern-pdf.ts';
import { Unusable } from '../../input/unusable.ts';
import { used } from '../../input/used.ts';
import { json, walkResult } from '../../output/walk-result.ts';
import { drawnStepByStep, type StepPages, sewnStepByStep } from '../../steps/made-step-by-step.ts';
import type { BodyFields } from '../body-form.ts';
import { patternName, type Takeable } from '../takeables.ts';
import { readFonts } from './fonts.ts';
import type { MadeDraft } from './made-draft.ts';
import { bodyFile } from './write.ts';

/** What is written, and for whom. */
interface ToWrite extends MadeDraft {
  readonly body: BodyFields;
  readonly paper: string;
  readonly print: PrintOptions;
}

/** Files by their names. */
type WrittenFiles = readonly (readonly [string, string | Uint8Array])[];

type Writer = (drafted: ToWrite) => WrittenFiles | Promise<WrittenFiles>;

const one = (name: string, content: string | Uint8Array): WrittenFiles => [[name, content]];

async function pattern({ made, units, print }: ToWrite, called: string): Promise<WrittenFiles> {
  const paper = used(readPaper(called), units);
  const { pdf } = used(await patternPdf(made, paper, print, await readFonts()), units);
  const faults = pdfFaults(made, pdf);
  if (faults.length > 0) throw new Unusable(faults, units);
  return one(patternName(made.garment.name, paper.name), pdf);
}

const printed = async ({ pages, title, file }: StepPages): Promise<WrittenFiles> =>
  one(`${file}.pdf`, await pdfOf(pages, title, await readFonts()));

const shown = ({ html, file }: StepPages): WrittenFiles => one(`${file}.html`, html);

const undated = ({ units }: ToWrite) => ({ date: undefined, units });

const cutting =
  (also: 'dxf' | 'dxf-curves'): Writer =>
  ({ made, units, print }) => {
    const { files, issues } = alsoWritten([also], 'cutting', (flavour) =>
      provenCuttingFile(made, flavour, print),
    );
    if (issues.length > 0) throw new Unusable(issues, units);
    return [...files];
  };

/** Who writes what: each the very functions of the command that writes the same. */
const writers: { readonly [Each in Takeable]: Writer } = {
  pattern: (asked) => pattern(asked, asked.paper),
  projector: (asked) => pattern(asked, 'projector'),
  sheet: ({ made, print }) => one('sheet.svg', provenSheet(made, print).sheet),
  pieces: ({ made, print }) => [...provenSheet(made, print).pieces()],
  dxf: cutting('dxf'),
  'dxf-curves': cutting('dxf-curves'),
  'sewing print': (asked) => printed(sewnStepByStep(asked.made, undated(asked))),
  'sewing page': (asked) => shown(sewnStepByStep(asked.made, undated(asked))),
  'lesson print': (asked) => printed(drawnStepByStep(asked.made, undated(asked))),
  'lesson page': (asked) => shown(drawnStepByStep(asked.made, undated(asked))),
  report: ({ made, print }) => one('report.json', json(walkResult(provenSheet(made, print).report, made))),
  body: ({ body }) => {
    const { name, text } = bodyFile(body, 'yaml');
    return one(name, text);
  },
};

/**
 * Writes things of a garment, to the byte as the command line does. Throws `Unusable` where its sheet, read back, is not true,
 * and where one of them cannot be written.
 */
export async function* writtenOf(
  writings: readonly Takeable[],
  drafted: MadeDraft,
  asked: { readonly body: BodyFields; readonly paper: string },
): AsyncGenerator<WrittenFiles> {
  const { drafting, made, units } = drafted;
  const print = { date: undefined, units, notches: notchesOf(made.styling) };
  const holds = (other: Evaluation): boolean => provenSheet(other, print).report.ok;
  const { draft, done } = drafting;
  await done(() => used(onlyTrue(draft, made, provenSheet(made, print).report, holds), units));
  for (const writing of writings) yield writers[writing]({ ...drafted, ...asked, print });
}
