import { Command } from 'commander';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import {
  askedGarment,
  draftedGarment,
  type GarmentOptions,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { cutListResult, materialsLines, materialsResult } from '../garment/materials-words.ts';
import { dateOption } from '../input/options.ts';
import { say, tell } from '../output/say.ts';
import type { SewnResult } from '../results/made.ts';
import type { ExitCode, Session } from '../session.ts';
import { sewnStepByStep } from './made-step-by-step.ts';
import { writeStepPages } from './step-pages.ts';
import { wornLines } from './worn-lines.ts';

interface SewOptions extends GarmentOptions {
  readonly out: string;
  readonly worn?: string;
}

/** `bodkin sew`: how the garment is sewn, step by step, as a page to print. */
export const sewCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('sew')
      .description('write how a garment is sewn, step by step, with drawings and the figures of one body')
      .argument('<garment>', 'what to sew (see “bodkin list”)')
      .requiredOption('--body <file>', 'measurements, YAML or JSON')
      .requiredOption('--out <folder>', 'where to write; made if it is not there')
      .option('--worn <folder>', 'show the finished garment, from the folder that “bodkin wear” wrote of it')
      .addOption(dateOption()),
  ).action(async (name: string, options: SewOptions) => finish(await sew(session, name, options)));

async function sew(session: Session, name: string, options: SewOptions): Promise<ExitCode> {
  const asked = await askedGarment(session, name, options);
  const drafted = await draftedGarment(session, asked, options);
  const { garment, reader } = drafted;
  const finished = options.worn === undefined ? [] : await wornLines(options.worn, garment);
  const { materials, ...made } = sewnStepByStep(drafted, { date: asked.date, units: reader.units }, finished);
  const more: Pick<SewnResult, 'steps' | 'cutList' | 'materials'> = {
    steps: (garment.sewing ?? []).map(sewingStepResult),
    cutList: cutListResult(garment),
    materials: materialsResult(materials),
  };
  return writeStepPages(session, drafted, options, {
    ...made,
    more,
    words: async () => {
      await say(session, contents(made.steps));
      await say(session, `\n${materialsLines(garment, materials, reader)}`);
      tell(session, `wrote sewing.html and sewing.pdf into ${options.out}\n`);
    },
  });
}

const sewingStepResult = (
  { title, sews, turns, uses, stitch, seamClass, finish }: SewingStep,
  i: number,
): SewnResult['steps'][number] => ({
  number: i + 1,
  title,
  ...(sews && { sews: [...sews] }),
  ...(turns && { turns: turns.map(({ piece, edge }) => ({ piece, edge })) }),
  ...(uses && { uses: [...uses] }),
  ...(stitch && { stitch }),
  ...(seamClass && { seamClass }),
  ...(finish && { finish }),
});

const contents = (steps: readonly { readonly title: string }[]): string =>
  steps.map(({ title }, i) => `${String(i + 1).padStart(3)}. ${title}\n`).join('');
