import { Command, CommanderError } from 'commander';
import type { Issue } from '../engine/issue.ts';
import packed from '../package.json' with { type: 'json' };
import { alterCommand } from './alter.ts';
import { bodyCommand } from './body.ts';
import { completionCommand } from './completion/completion.ts';
import { draftCommand } from './draft.ts';
import { explainCommand } from './explain.ts';
import { gradeCommand } from './grade.ts';
import { layCommand } from './lay.ts';
import { listCommand } from './list.ts';
import { helpAsked, misread, refuseUnknown } from './misread-line.ts';
import { openCommand } from './open.ts';
import { collectCommand } from './orders/collect.ts';
import { sendCommand } from './orders/send.ts';
import { workCommand } from './orders/work.ts';
import { withOwnDrafts } from './own-draft.ts';
import { printCommand } from './print.ts';
import { programFault } from './program-fault.ts';
import { proveCommand } from './prove.ts';
import type { RefusalResult } from './results/issue.ts';
import { say, tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { sewCommand } from './sew.ts';
import { teachCommand } from './teach.ts';
import { Unusable } from './unusable.ts';
import { walkCommand } from './walk.ts';
import { issuesResult, json } from './walk-result.ts';
import { wearCommand } from './wear.ts';

const { version } = packed;

const help = `
With --draft FILE, anywhere on the line, a garment drafted in a file of your own is one more of those in “bodkin list”.

Exit codes: 0 all true, 1 a check failed, 2 the input cannot be used or makes nothing true, 70 a fault of the program.
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
  // Whoever asked for JSON reads no words: the issues are told in it, unless the command has done so itself.
  const tellData = async (issues: readonly Issue[]): Promise<void> => {
    const refusal: RefusalResult = { ok: false, issues: issuesResult(issues) };
    if (given.includes('--json') && !written) await session.write(json(refusal));
  };
  try {
    const { words, drafts } = await withOwnDrafts(given);
    return await runCommand(words, { ...noting, garments: [...drafts, ...session.garments] });
  } catch (error) {
    if (!(error instanceof Unusable)) {
      await tellData([programFault(error)]);
      throw error;
    }
    await tellData(error.issues);
    sayIssues(session, error.issues, error.units);
    return 2;
  }
}

async function runCommand(given: readonly string[], session: Session): Promise<ExitCode> {
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
    wearCommand,
    gradeCommand,
    proveCommand,
    alterCommand,
    layCommand,
    sendCommand,
    workCommand,
    collectCommand,
    bodyCommand,
    openCommand,
    listCommand,
    explainCommand,
    completionCommand,
  ])
    program.addCommand(command(session, finish));
  let said = '';
  for (const command of [program, ...program.commands])
    command.exitOverride().configureOutput({
      writeOut: (text) => {
        said += text;
      },
      // A line that cannot be read is told as an issue, like anything else.
      outputError: () => undefined,
      writeErr: (text) => tell(session, text),
      getOutHelpWidth: () => session.columns,
      getErrHelpWidth: () => session.columns,
    });
  const words = helpAsked(given);
  refuseUnknown(program, words);
  try {
    await program.parseAsync(words, { from: 'user' });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return 0;
    // Without any word, the help has been shown instead.
    if (error.code === 'commander.help') return 2;
    throw misread(error, words);
  } finally {
    if (said) await say(session, said);
  }
}
