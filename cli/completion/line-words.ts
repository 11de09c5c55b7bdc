import type { Argument, Command, Option } from 'commander';
import { knownCodes } from '../../engine/issue-codes/issue-codes.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { paperNames } from '../../engine/render/tiles/papers.ts';

/** Everything that can stand on a command line, as plain data for the shells. */
export interface LineWords {
  readonly commands: readonly CommandWords[];
  readonly garments: readonly GarmentWords[];
}

export interface CommandWords {
  readonly name: string;
  readonly says: string;
  /** What the command is about, where it is about anything. */
  readonly about: Value | undefined;
  readonly options: readonly OptionWords[];
}

export interface OptionWords {
  readonly flag: string;
  readonly says: string;
  /** What stands after it, where anything does. */
  readonly takes: Value | undefined;
}

/** What a word may be: one of a few, a garment, a choice of the garment on the line, a file, or anything. */
export type Value =
  | { readonly kind: 'words'; readonly words: readonly string[] }
  | { readonly kind: 'garment' | 'choice' | 'file' | 'folder' | 'anything' };

/** A garment, the names of its choices, and each value that is a word, as --set takes them. */
export interface GarmentWords {
  readonly name: string;
  readonly names: readonly string[];
  readonly settings: readonly string[];
}

/** The words of a program's command line. */
export const lineWords = (commands: readonly Command[], garments: readonly Draft[]): LineWords => ({
  commands: [
    ...commands.map((command) => ({
      name: command.name(),
      says: command.description(),
      about: aboutOf(command.registeredArguments[0]),
      options: [...command.options.map(optionWords), helpOption],
    })),
    {
      name: 'help',
      says: 'show what a command is for, and its options',
      about: { kind: 'words', words: commands.map((command) => command.name()) },
      options: [],
    },
  ],
  garments: garments.map(({ name, choices }) => ({
    name,
    names: choices.map((choice) => choice.name),
    settings: choices.flatMap((choice) =>
      choice.kind === 'word' ? choice.words.map((word) => `${choice.name}=${word}`) : [],
    ),
  })),
});

const helpOption: OptionWords = { flag: '--help', says: 'show the options', takes: undefined };

const optionWords = ({ long, description, flags, required, argChoices }: Option): OptionWords => ({
  flag: long ?? '',
  says: description,
  takes: required ? valueCalled(/<(.*)>/.exec(flags)?.[1] ?? '', argChoices) : undefined,
});

const aboutOf = (argument: Argument | undefined): Value | undefined =>
  argument && valueCalled(argument.name(), argument.argChoices);

/** What a value may be, by what the help calls it. */
function valueCalled(called: string, choices: readonly string[] | undefined): Value {
  if (choices) return { kind: 'words', words: choices };
  switch (called) {
    case 'garment':
      return { kind: 'garment' };
    case 'name=value':
      return { kind: 'choice' };
    case 'file':
    case 'svg':
    case 'file#edge':
      return { kind: 'file' };
    case 'folder':
      return { kind: 'folder' };
    case 'paper':
      return { kind: 'words', words: [...paperNames, 'roll:914'] };
    case 'code':
      return { kind: 'words', words: knownCodes };
    default:
      return { kind: 'anything' };
  }
}
