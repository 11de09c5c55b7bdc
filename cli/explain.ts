import { Command } from 'commander';
import { explanations, type KnownCode, knownCodes } from '../engine/issue-codes/issue-codes.ts';
import { nearestWord } from '../engine/text/nearest-word.ts';
import { jsonOption } from './input/options.ts';
import { unusable } from './input/unusable.ts';
import { say } from './output/say.ts';
import { json } from './output/walk-result.ts';
import type { ExplainedResult } from './results/listed.ts';
import type { ExitCode, Session } from './session.ts';

/** `bodkin explain`: what an issue’s code means, and what to do. */
export const explainCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('explain')
    .description('say what the code of an issue means, and what to do; without one, of every code')
    .argument('[code]', 'as --json prints it, such as seam-does-not-walk')
    .addOption(jsonOption())
    .action(async (code: string | undefined, options: { readonly json?: true }) => {
      const asked = code === undefined ? knownCodes : [findCode(code)];
      const result: ExplainedResult = asked.map((each) => ({ code: each, means: explanations[each] }));
      if (options.json) await session.write(json(result));
      else await say(session, result.map(({ code: each, means }) => `${each}: ${means}\n`).join(''), 2);
      finish(0);
    });

function findCode(code: string): KnownCode {
  const found = knownCodes.find((known) => known === code);
  if (found) return found;
  const near = nearestWord(code, knownCodes);
  const hint = near ? `Did you mean “${near}”?` : '“bodkin explain” lists them all.';
  throw unusable('unknown-code', 'code', `No issue has the code “${code.slice(0, 60)}”. ${hint}`);
}
