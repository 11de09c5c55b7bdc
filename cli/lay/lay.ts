import { Command, Option } from 'commander';
import { leastLength } from '../../engine/lay/least-length.ts';
import { densityOf } from '../../engine/lay/problem.ts';
import type { Cloth } from '../../engine/lay-plan/cloth.ts';
import { fixed } from '../../engine/text/figure.ts';
import { type GarmentOptions, takesGarment } from '../garment/drafted-garment.ts';
import { numberOf } from '../input/number-of.ts';
import { unusable } from '../input/unusable.ts';
import { say } from '../output/say.ts';
import { json } from '../output/walk-result.ts';
import type { ExitCode, Session } from '../session.ts';
import { type ClothWords, clothTold, usualCloth } from './cloth-asked.ts';
import { layGarment } from './lay-garment.ts';
import { seekLay } from './lay-search.ts';
import { layResult, readShapes } from './lay-shapes.ts';
import type { Effort } from './seek-lay.ts';

interface LayOptions extends GarmentOptions {
  readonly shapes?: string;
  readonly width?: string;
  readonly cloth: 'folded' | 'open';
  readonly nap?: true;
  readonly selvedge: string;
  readonly gap: string;
  readonly shrink: string;
  readonly stripe: string;
  readonly stripeAlong: string;
  readonly oneOrder?: true;
  readonly seconds: string;
  readonly rounds?: string;
  readonly seed: string;
  readonly out?: string;
  readonly sizes?: string;
  readonly only?: string;
}

const help = `
Every cut piece is laid as often as it is cut: once through both layers of folded cloth where it is one of a pair, as drawn and turned over on open cloth, with its fold on the fold of folded cloth and opened on open cloth; with its grain along the cloth, and without --nap, --stripe or --one-order either way up. A single piece is cut of the upper layer.

Stripes across the cloth (--stripe) meet at the seams along the grain, at a notch of each, and a repeat more is bought, so that the lay can begin with one. Stripes along the cloth (--stripe-along) lie on the centre lines and meet at the seams across the grain; a repeat of the width is kept for that. Both together are a check. With --one-order they meet where they run on, as at a waist, and not where one side would have to be the other’s mirror image, as at a shoulder. There is a plan for each cloth. The search goes on for --seconds, or for --rounds, and then the lay is the same every time; Ctrl-C ends it and keeps the best. What is said was read back from the plan and proven.

  bodkin lay dress --body leading-lady.yaml --width 1400 --cloth folded --out lay
  bodkin lay dress --sizes stock.yaml --only "40 C, 42 C, 42 C" --width 1400 --out lay
  bodkin lay skirt --body leading-lady.yaml --width 150cm --nap --shrink 3 --seconds 20`;

/** `bodkin lay`: pieces on a strip of cloth, with little waste. */
export const layCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('lay')
      .description('lay the pieces of a garment on the cloth with little waste, proven free of overlaps')
      .argument('[garment]', 'what to lay (see “bodkin list”)')
      .option('--body <file>', 'measurements, YAML or JSON')
      .addOption(
        new Option(
          '--sizes <file>',
          'a size chart, YAML, JSON or CSV: lay several sizes together instead of one body',
        ).conflicts('body'),
      )
      .option(
        '--only <sizes>',
        'of the chart only these, with commas between: “40 C, 42 C”; one that comes twice is cut twice',
      )
      .option('--width <length>', 'width of the cloth from selvedge to selvedge, mm unless it says cm or in')
      .addOption(
        new Option('--cloth <how>', 'folded lengthwise, or open in one layer')
          .choices(['folded', 'open'])
          .default(usualCloth.cloth),
      )
      .option('--nap', 'all pieces run the same way')
      .option('--selvedge <length>', 'kept free along each selvedge', usualCloth.selvedge)
      .option('--gap <length>', 'kept free between cutting lines', usualCloth.gap)
      .option(
        '--shrink <percent>',
        'what the cloth loses in the wash before it is cut, both ways',
        usualCloth.shrink,
      )
      .option(
        '--stripe <length>',
        'after so much of its length stripes across the cloth repeat: pieces lie so that they meet',
        usualCloth.stripe,
      )
      .option(
        '--stripe-along <length>',
        'after so much of its width stripes along the cloth repeat; with --stripe a check',
        usualCloth.stripeAlong,
      )
      .option(
        '--one-order',
        'the colours of stripes along the cloth follow each other in one order: all tops one way, and nothing meets as a mirror image',
      )
      .option('--out <folder>', 'write the plans there, as SVG and PDF; made if it is not there')
      .option('--shapes <file>', 'lay the shapes of a JSON file (strip_height, items) instead of a garment')
      .option('--seconds <number>', 'how long to seek', '60')
      .option('--rounds <number>', 'end after so many rounds: the same lay every time')
      .option('--seed <number>', 'another seed seeks elsewhere', '1'),
  )
    .addHelpText('after', help)
    .action(async (name: string | undefined, options: LayOptions) => {
      const effort = readEffort(options);
      finish(
        options.shapes === undefined
          ? await layGarment(session, garmentNamed(name), { ...options, cloth: clothAsked(options), effort })
          : await layShapes(session, options.shapes, effort, options.json),
      );
    });

function garmentNamed(name: string | undefined): string {
  if (name === undefined)
    throw unusable('nothing-to-lay', 'garment', 'Say which garment to lay, or give --shapes FILE.');
  return name;
}

const called: ClothWords = {
  width: '--width',
  selvedge: '--selvedge',
  gap: '--gap',
  shrink: '--shrink',
  stripe: '--stripe',
  stripeAlong: '--stripe-along',
};

function clothAsked(options: LayOptions): Cloth {
  const { body, sizes, only, width } = options;
  const forWhom = body !== undefined || sizes !== undefined;
  if (!forWhom || width === undefined)
    throw unusable(
      'option-missing',
      forWhom ? '--width' : '--body',
      'A lay needs --body FILE, the measurements, or --sizes FILE, a size chart, and --width MM, the width of the cloth.',
    );
  if (only !== undefined && sizes === undefined)
    throw unusable(
      'option-missing',
      '--only',
      '--only chooses among the sizes of a chart: give it with --sizes FILE.',
    );
  const cloth = clothTold({ ...options, width }, called);
  if (options.oneOrder && cloth.stripeAlong === 0)
    throw unusable(
      'option-missing',
      '--one-order',
      '--one-order speaks of stripes along the cloth: give it with --stripe-along MM, after which their colours repeat.',
    );
  return cloth;
}

async function layShapes(
  session: Session,
  file: string,
  effort: Effort,
  asJson: true | undefined,
): Promise<ExitCode> {
  const problem = await readShapes(file);
  const lay = await seekLay(session, problem, effort);
  if (asJson) await session.write(json(layResult(problem, lay)));
  else {
    const percent = fixed(100 * densityOf(problem, lay.length), 2);
    await say(
      session,
      `${lay.placements.length} shapes on ${fixed(lay.length, 3)} of a strip ${problem.width} wide: ${percent} % used, no overlaps (proven)\nno lay can be shorter than ${fixed(leastLength(problem), 3)}\n`,
    );
  }
  return 0;
}

/** The effort asked for. */
function readEffort({ seconds, rounds, seed }: LayOptions): Effort {
  return {
    seconds: numberOf('--seconds', seconds, 0.1, 86_400),
    rounds: rounds === undefined ? undefined : Math.round(numberOf('--rounds', rounds, 1, 1e9)),
    seed: Math.round(numberOf('--seed', seed, 0, 2 ** 31)),
  };
}
