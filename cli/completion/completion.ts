import { Argument, Command } from 'commander';
import type { ExitCode, Session } from '../session.ts';
import { bashScript } from './bash.ts';
import { fishScript } from './fish.ts';
import { type LineWords, lineWords } from './line-words.ts';
import { zshScript } from './zsh.ts';

const shells = { bash: bashScript, zsh: zshScript, fish: fishScript } as const satisfies Readonly<
  Record<string, (words: LineWords) => string>
>;

type Shell = keyof typeof shells;

const help = `
  bash   eval "$(bodkin completion bash)"        in ~/.bashrc
  zsh    eval "$(bodkin completion zsh)"         in ~/.zshrc, after compinit
  fish   bodkin completion fish | source         in ~/.config/fish/config.fish`;

/** `bodkin completion`: a script by which a shell completes commands, options, garments and choices. */
export const completionCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('completion')
    .description('print a script by which a shell completes commands, options, garments and choices')
    .addArgument(new Argument('<shell>', 'which shell').choices(Object.keys(shells)))
    .addHelpText('after', help)
    .action(async (shell: Shell, _options: unknown, command: Command) => {
      await session.write(shells[shell](lineWords(command.parent?.commands ?? [], session.garments)));
      finish(0);
    });
