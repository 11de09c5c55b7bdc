import type { Command, CommanderError } from 'commander';
import type { IssueCode } from '../engine/issue-codes/issue-codes.ts';
import { nearestWord } from '../engine/text/nearest-word.ts';
import { type Unusable, unusable } from './input/unusable.ts';

/**
 * A command or an option that does not exist, wherever it stands on the line: to be told before anything is missed
 * that was perhaps meant by it. Throws `Unusable`.
 */
export function refuseUnknown(program: Command, words: readonly string[]): void {
  const [name = '', ...rest] = words;
  if (name === '' || name.startsWith('-')) return;
  const command = program.commands.find((each) => each.name() === name);
  if (!command) throw unknownCommand(program, name);
  const flag = unknownFlag(command, rest);
  if (flag === undefined) return;
  const flags = command.options.flatMap(({ long }) => long ?? []);
  const near = nearestWord(flag, flags);
  throw unusable(
    'unknown-option',
    flag.slice(0, 40),
    `There is no option ${flag.slice(0, 40)} of “bodkin ${name}”. ${near ? `Did you mean ${near}?` : helpOn(name)}`,
  );
}

function unknownCommand(program: Command, name: string): Unusable {
  const names = program.commands.map((each) => each.name());
  const near = nearestWord(name, names);
  const hint = near ? `Did you mean “${near}”?` : `Known are: ${names.join(', ')}.`;
  return unusable('unknown-command', 'command', `There is no command “${name.slice(0, 40)}”. ${hint}`);
}

/** The first option that a command does not have; what stands behind one that takes a value is its value. */
function unknownFlag(command: Command, words: readonly string[]): string | undefined {
  for (let i = 0; i < words.length; i++) {
    const [flag = ''] = (words[i] ?? '').split('=');
    if (flag === '--') return undefined;
    if (!/^--?[a-z]/i.test(flag) || flag === '--help' || flag === '-h') continue;
    const option = command.options.find(({ long }) => long === flag);
    if (!option) return flag;
    if (option.required && words[i] === flag) i += 1;
  }
  return undefined;
}

/** `help`, `help draft` and `draft help` ask for what `--help` prints. */
export function helpAsked(words: readonly string[]): readonly string[] {
  const [first, second, ...more] = words;
  if (first === 'help' && more.length === 0) return second === undefined ? ['--help'] : [second, '--help'];
  return second === 'help' && more.length === 0 && first !== undefined ? [first, '--help'] : words;
}

/** What the parser of the line found wrong, as an issue of ours: its code, and a sentence from what it put in quotes. */
export function misread({ code, message }: CommanderError, words: readonly string[]): Unusable {
  const command = words.find((word) => !word.startsWith('-')) ?? '';
  const quoted = [...message.matchAll(/'([^']*)'/g)].map(([, word = '']) => word);
  const [subject = '', other = ''] = quoted;
  const [, advice = helpOn(command)] = / is invalid.*?\. (.*)$/s.exec(message) ?? [];
  const [own, sentence] = ((): readonly [IssueCode, string] => {
    switch (code) {
      case 'commander.missingMandatoryOptionValue':
        return ['option-missing', `“bodkin ${command}” needs ${subject}. ${helpOn(command)}`];
      case 'commander.missingArgument':
        return ['argument-missing', `“bodkin ${command}” needs <${subject}>. ${helpOn(command)}`];
      case 'commander.optionMissingArgument':
        return ['option-without-value', `Something is missing after ${subject.replace(' ', ': ')}.`];
      case 'commander.conflictingOption':
        return ['options-conflict', `${subject} cannot be used with ${other}.`];
      case 'commander.excessArguments':
        return ['too-many-arguments', `“bodkin ${command}” takes fewer words. ${helpOn(command)}`];
      case 'commander.invalidArgument':
        return message.includes('command-argument')
          ? ['value-unusable', `<${other}> cannot be “${subject.slice(0, 60)}”. ${advice}`]
          : ['value-unusable', `${subject} cannot be “${other.slice(0, 60)}”. ${advice}`];
      case 'commander.unknownOption':
        return ['unknown-option', `There is no option ${subject.slice(0, 40)}. ${helpOn(command)}`];
      default:
        return ['value-unusable', message.replace(/^error: /, '')];
    }
  })();
  return unusable(own, subject.split(' ')[0] ?? '', sentence);
}

const helpOn = (command: string): string => `“${`bodkin help ${command}`.trim()}” shows what there is.`;
