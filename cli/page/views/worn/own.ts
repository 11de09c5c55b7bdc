import type { AskedDraft } from '../../asked-draft.ts';
import { hearing } from '../../hearing.ts';
import type { OwnState } from '../../own-state.ts';
import type { PageIssue } from '../../page-issue.ts';
import type { WornShown } from '../../requests/wear-messages.ts';

/** A garment that is put on, and how. */
export interface Wearing {
  readonly cloth: string;
  /** How fine it is computed: a first answer, or as the command line does. */
  readonly fine: boolean;
  /** Counts what was put on. */
  readonly number: number;
  /** What was put on. */
  readonly of: AskedDraft | undefined;
  /** The share that is over. */
  readonly busy: number | undefined;
  readonly worn: WornShown | undefined;
  readonly issues: readonly PageIssue[];
  /** Findings that were taken over, by their words. */
  readonly taken: readonly string[];
}

export type WornAction =
  | { readonly does: 'cloth'; readonly cloth: string }
  | { readonly does: 'fine'; readonly fine: boolean }
  | { readonly does: 'begin'; readonly number: number; readonly of: AskedDraft }
  | { readonly does: 'take over'; readonly words: readonly string[] };

export const wearing: OwnState<Wearing, WornAction> = {
  empty: {
    cloth: 'cotton',
    fine: false,
    number: 0,
    of: undefined,
    busy: undefined,
    worn: undefined,
    issues: [],
    taken: [],
  },
  reduce: (own, action) => {
    switch (action.does) {
      case 'cloth':
        return { ...own, cloth: action.cloth };
      case 'fine':
        return { ...own, fine: action.fine };
      case 'begin':
        return { ...own, number: action.number, of: action.of, busy: 0, issues: [], taken: [] };
      case 'take over':
        return { ...own, taken: [...own.taken, ...action.words] };
    }
  },
  hear: hearing({
    asks: 'wear',
    refused: (own) => ({ ...own, busy: undefined }),
    hears: {
      wearing: (own, { share }) => ({ ...own, busy: share }),
      worn: (own, { worn, issues }) => ({ ...own, busy: undefined, worn, issues }),
    },
  }),
};
