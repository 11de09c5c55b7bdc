import { Command, CommanderError } from 'commander';
import { alterCommand } from './alter.ts';
import { bodyCommand } from './body.ts';
import { draftCommand } from './draft.ts';
import { listCommand } from './list.ts';
import { plain } from './plain.ts';
import { printCommand } from './print.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { sewCommand } from './sew.ts';
import { teachCommand } from './teach.ts';
import { Unusable } from './unusable.ts';
import { walkCommand } from './walk.ts';

const help = `
Exit codes: 0 all true, 1 a check failed, 2 the input cannot be used.
Results go to standard output, words to standard error.`;

/** Runs one command line (without the program's own name). Only bugs throw. */
export async function run(words: readonly string[], session: Session): Promise<ExitCode> {
  let code: ExitCode = 0;
  const finish = (result: ExitCode): void => {
    code = result;
  };
  const program = new Command('bodkin')
    .description('Drafts a fitted dress from one person’s measurements and proves that its pieces fit.')
    .addHelpText('after', help)
    .helpCommand(false);
  for (const command of [
    draftCommand,
    printCommand,
    sewCommand,
    teachCommand,
    walkCommand,
    alterCommand,
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
        writeErr: (text) => session.tell(plain(text)),
      })
      .showHelpAfterError('(add --help for help)');
  try {
    await program.parseAsync(words, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof Unusable)) throw error;
    sayIssues(session, error.issues);
    return 2;
  } finally {
    if (said) await session.write(said);
  }
}
