import { hearing } from '../../hearing.ts';
import type { OwnState } from '../../own-state.ts';
import type { PageIssue } from '../../page-issue.ts';
import type { Takeable } from '../../takeables.ts';

/** What is asked for of files, and what came of it. */
export interface Taking {
  /** The paper by its name, or `roll`. */
  readonly paper: string;
  /** The width of the roll, as it was typed. */
  readonly roll: string;
  /** What is left out of the ZIP. */
  readonly without: readonly Takeable[];
  /** Counts what is asked for. */
  readonly number: number;
  /** What is written just now, in words. */
  readonly busy: string | undefined;
  /** What became of the last, in words; what was found of it. */
  readonly last: string | undefined;
  readonly issues: readonly PageIssue[];
}

export type TakeAction =
  | { readonly does: 'paper'; readonly paper: string }
  | { readonly does: 'roll'; readonly text: string }
  | { readonly does: 'include'; readonly writing: Takeable; readonly included: boolean }
  | { readonly does: 'begin'; readonly number: number };

export const taking: OwnState<Taking, TakeAction> = {
  empty: {
    paper: 'a4',
    roll: '914',
    without: [],
    number: 0,
    busy: undefined,
    last: undefined,
    issues: [],
  },
  reduce: (own, action) => {
    switch (action.does) {
      case 'paper':
        return { ...own, paper: action.paper };
      case 'roll':
        return { ...own, roll: action.text };
      case 'include': {
        const others = own.without.filter((each) => each !== action.writing);
        return { ...own, without: action.included ? others : [...others, action.writing] };
      }
      case 'begin':
        return { ...own, number: action.number, busy: 'Drafting …', last: undefined, issues: [] };
    }
  },
  hear: hearing({
    asks: 'take',
    refused: (own) => ({ ...own, busy: undefined }),
    hears: {
      taking: (own, { what, done, of }) => ({
        ...own,
        busy: `Writing ${what}${of > 1 ? ` (${done + 1} of ${of})` : ''} …`,
      }),
      taken: (own, { handed, issues }) => ({
        ...{ ...own, busy: undefined, issues },
        last: handed.length > 0 ? `Handed to the browser: ${namesOf(handed)}.` : undefined,
      }),
    },
  }),
};

const namesOf = (files: readonly { readonly name: string }[]): string =>
  files.map(({ name }) => name).join(', ');

/** The paper as the command line calls it. */
export const paperAsked = ({ paper, roll }: Pick<Taking, 'paper' | 'roll'>): string =>
  paper === 'roll' ? `roll:${roll.trim()}` : paper;
