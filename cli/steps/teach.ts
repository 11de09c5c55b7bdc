import { Command } from 'commander';
import {
  askedGarment,
  draftedGarment,
  type GarmentOptions,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { dateOption } from '../input/options.ts';
import { tell } from '../output/say.ts';
import type { ExitCode, Session } from '../session.ts';
import { drawnStepByStep } from './made-step-by-step.ts';
import { writeStepPages } from './step-pages.ts';

interface TeachOptions extends GarmentOptions {
  readonly out: string;
}

/** `bodkin teach`: how the garment is drawn for one body, step by step, as a lesson to print. */
export const teachCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('teach')
      .description('write how a garment is drawn for one body, step by step, with drawings to scale')
      .argument('<garment>', 'what to draw (see “bodkin list”)')
      .requiredOption('--body <file>', 'measurements, YAML or JSON')
      .requiredOption('--out <folder>', 'where to write; made if it is not there')
      .addOption(dateOption()),
  ).action(async (name: string, options: TeachOptions) => finish(await teach(session, name, options)));

async function teach(session: Session, name: string, options: TeachOptions): Promise<ExitCode> {
  const asked = await askedGarment(session, name, options);
  const drafted = await draftedGarment(session, asked, options);
  const made = drawnStepByStep(drafted, { date: asked.date, units: drafted.reader.units });
  return writeStepPages(session, drafted, options, {
    ...made,
    words: async () =>
      tell(session, `wrote lesson.html and lesson.pdf, ${made.steps.length} steps, into ${options.out}\n`),
  });
}
