import { Command, CommanderError } from 'commander';
import packed from '../package.json' with { type: 'json' };
import { alterCommand } from './alter.ts';
import { bodyCommand } from './body.ts';
import { draftCommand } from './draft.ts';
import { layCommand } from './lay.ts';
import { listCommand } from './list.ts';
import { withOwnDrafts } from './own-draft.ts';
import { printCommand } from './print.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { sewCommand } from './sew.ts';
import { teachCommand } from './teach.ts';
import { Unusable } from './unusable.ts';
import { walkCommand } from './walk.ts';
import { issuesResult, json } from './walk-result.ts';

const { version } = packed;

const help = `
With --draft FILE, anywhere on the line, a garment drafted in a file of your own is one more of those in “bodkin list”.

Exit codes: 0 all true, 1 a check failed, 2 the input cannot be used.
Results go to standard output, words to standard error.`;

/** Runs one command line (without the program's own name). Only bugs throw. */
export async function run(given: readonly string[], session: Session): Promise<ExitCode> {
  let written = false;
  const noting: Session = {
    ...session,
    write: (text) => {
      written = true;
      return session.write(text);
    },
  };
  try {
    const { words, drafts } = await withOwnDrafts(given);
    return await runCommand(words, { ...noting, garments: [...drafts, ...session.garments] });
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    // Whoever asked for JSON reads no words: the issues are told in it, unless the command has done so itself.
    if (given.includes('--json') && !written)
      await session.write(json({ ok: false, issues: issuesResult(error.issues) }));
    sayIssues(session, error.issues, error.units);
    return 2;
  }
}

async function runCommand(words: readonly string[], session: Session): Promise<ExitCode> {
  let code: ExitCode = 0;
  const finish = (result: ExitCode): void => {
    code = result;
  };
  const program = new Command('bodkin')
    .description('Drafts a fitted dress from one person’s measurements and proves that its pieces fit.')
    .addHelpText('after', help)
    .version(version, '--version', 'print the version');
  for (const command of [
    draftCommand,
    printCommand,
    sewCommand,
    teachCommand,
    walkCommand,
    alterCommand,
    layCommand,
    bodyCommand,
    listCommand,
  ])
    program.addCommand(command(session, finish));
  let said = '';
  for (const command of [program, ...program.commands])
    command
      .exitOverride()
      .configureOutput({
        writeOut: (text) => {
          said += text;
        },
        writeErr: (text) => tell(session, text),
        getOutHelpWidth: () => session.columns,
        getErrHelpWidth: () => session.columns,
      })
      .showHelpAfterError('(add --help for help)');
  try {
    await program.parseAsync(words, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    throw error;
  } finally {
    if (said) await say(session, said);
  }
}
