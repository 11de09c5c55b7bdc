import { Command } from 'commander';
import { materialsFor } from '../engine/materials/materials.ts';
import { toBuyWords } from '../engine/materials/words.ts';
import { sewingPages } from '../engine/render/sewing-sheet/pdf/sewing-pages.ts';
import { sewingSheet } from '../engine/render/sewing-sheet/sewing-sheet.ts';
import { askedGarment, draftedGarment, type GarmentOptions, takesGarment } from './drafted-garment.ts';
import { cutListResult, materialsLines, materialsResult } from './materials-words.ts';
import { dateOption } from './options.ts';
import type { SewnResult } from './results/made.ts';
import { say, tell } from './say.ts';
import type { ExitCode, Session } from './session.ts';
import { writeStepPages } from './step-pages.ts';
import { unusable } from './unusable.ts';
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
  const { garment, cutLines, reader } = drafted;
  const steps = garment.sewing;
  if (!steps) throw unusable('no-sewing-order', 'garment', `There is no sewing order for “${garment.name}”.`);
  const finished = options.worn === undefined ? [] : await wornLines(options.worn, garment);
  const as = { date: asked.date, units: reader.units };
  const materials = materialsFor(garment, cutLines, reader.units, 'planned');
  const toBuy = toBuyWords(materials, reader.units);
  const more: Pick<SewnResult, 'cutList' | 'materials'> = {
    cutList: cutListResult(garment),
    materials: materialsResult(materials),
  };
  return writeStepPages(session, drafted, options, {
    file: 'sewing',
    title: `Sewing the ${garment.name} for ${garment.body}`,
    html: sewingSheet(garment, cutLines, as, toBuy, finished),
    pages: sewingPages(garment, cutLines, as, toBuy, finished),
    steps,
    more,
    words: async () => {
      await say(session, contents(steps));
      await say(session, `\n${materialsLines(garment, materials, reader)}`);
      tell(session, `wrote sewing.html and sewing.pdf into ${options.out}\n`);
    },
  });
}

const contents = (steps: readonly { readonly title: string }[]): string =>
  steps.map(({ title }, i) => `${String(i + 1).padStart(3)}. ${title}\n`).join('');
