import { Command } from 'commander';
import { areaOf, densityOf } from '../engine/lay/problem.ts';
import { type Effort, seekLay } from './lay-search.ts';
import { layResult, readShapes } from './lay-shapes.ts';
import { jsonOption } from './options.ts';
import type { ExitCode, Session } from './session.ts';
import { fixed } from './table.ts';
import { unusable } from './unusable.ts';
import { json } from './walk-result.ts';

interface LayOptions {
  readonly shapes?: string;
  readonly seconds: string;
  readonly rounds?: string;
  readonly seed: string;
  readonly json?: true;
}

/** `bodkin lay`: pieces on a strip of cloth, with little waste. */
export const layCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('lay')
    .description('lay the pieces on the cloth with little waste, proven free of overlaps')
    .option('--shapes <file>', 'lay the shapes of a JSON file (strip_height, items) instead of a garment')
    .option('--seconds <number>', 'how long to seek', '60')
    .option('--rounds <number>', 'end after so many rounds: the same lay every time')
    .option('--seed <number>', 'another seed seeks elsewhere', '1')
    .addOption(jsonOption())
    .action(async (options: LayOptions) => finish(await layShapes(session, options)));

async function layShapes(session: Session, options: LayOptions): Promise<ExitCode> {
  if (options.shapes === undefined)
    throw unusable('nothing-to-lay', '--shapes', 'Say what to lay: a file of shapes (--shapes FILE).');
  const effort = readEffort(options);
  const problem = await readShapes(options.shapes);
  const lay = await seekLay(session, problem, effort);
  if (options.json) await session.write(json(layResult(problem, lay)));
  else {
    const percent = fixed(100 * densityOf(problem, lay.length), 2);
    const least = fixed(areaOf(problem) / problem.width, 3);
    await session.write(
      `${lay.placements.length} shapes on ${fixed(lay.length, 3)} of a strip ${problem.width} wide: ${percent} % used, no overlaps (proven)\nno lay can be shorter than ${least}\n`,
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

function numberOf(option: string, text: string, min: number, max: number): number {
  const value = Number(text);
  if (text.trim() === '' || !(value >= min && value <= max))
    throw unusable('number-not-understood', option, `${option} takes a number from ${min} to ${max}.`);
  return value;
}
