import { Command, CommanderError } from 'commander';
import type { Issue } from '../engine/issue.ts';
import packed from '../package.json' with { type: 'json' };
import { Unusable } from './input/unusable.ts';
import { helpAsked, misread, refuseUnknown } from './misread-line.ts';
import { programFault } from './output/program-fault.ts';
import { say, tell } from './output/say.ts';
import { sayIssues } from './output/say-issues.ts';
import { issuesResult, json } from './output/walk-result.ts';
import { withOwnDrafts } from './own-draft/own-draft.ts';
import type { RefusalResult } from './results/issue.ts';
import type { ExitCode, Session } from './session.ts';

const { version } = packed;

const help = `
With --draft FILE, anywhere on the line, a garment drafted in a file of your own is one more of those in “bodkin list”, or
takes the place of the one of its name.

Exit codes: 0 all true, 1 a check failed, 2 the input cannot be used or makes nothing true, 70 a fault of the program,
74 the results cannot be written to standard output.
Results go to standard output, words to standard error.`;

const everyday = () => import('./everyday-commands.ts');
const further = () => import('./further-commands.ts');

/** Every command, in the order in which they are listed, and how it is loaded once it is asked for. */
const commands = {
  draft: async () => (await everyday()).draft,
  print: async () => (await everyday()).print,
  sew: async () => (await everyday()).sew,
  teach: async () => (await everyday()).teach,
  walk: async () => (await everyday()).walk,
  wear: async () => (await further()).wear,
  grade: async () => (await further()).grade,
  prove: async () => (await further()).prove,
  alter: async () => (await further()).alter,
  lay: async () => (await further()).lay,
  send: async () => (await further()).send,
  work: async () => (await further()).work,
  collect: async () => (await further()).collect,
  body: async () => (await everyday()).body,
  open: async () => (await further()).open,
  list: async () => (await everyday()).list,
  explain: async () => (await everyday()).explain,
  completion: async () => (await further()).completion,
} as const satisfies Readonly<Record<string, () => Promise<MakeCommand>>>;

type MakeCommand = (session: Session, finish: (code: ExitCode) => void) => Command;

type CommandName = keyof typeof commands;

const isCommand = (word: string | undefined): word is CommandName =>
  word !== undefined && Object.hasOwn(commands, word);

/** The commands that a line needs: its own, but for the version none, and all where it is of all of them or of none. */
function namedIn([first]: readonly string[]): readonly CommandName[] {
  if (first === '--version') return [];
  return isCommand(first) && first !== 'completion' ? [first] : (Object.keys(commands) as CommandName[]);
}

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
    const { words, drafts } = await withOwnDrafts(given, session.reading);
    const own = Array.from(drafts.keys());
    const others = session.garments.filter(({ name }) => own.every((draft) => draft.name !== name));
    return await runCommand(words, { ...noting, garments: [...own, ...others], draftFiles: drafts });
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
  const words = helpAsked(given);
  const program = new Command('bodkin')
    .description('Drafts a fitted dress from one person’s measurements and proves that its pieces fit.')
    .addHelpText('after', help)
    .version(version, '--version', 'print the version');
  for (const name of namedIn(words)) program.addCommand((await commands[name]())(session, finish));
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
