import { type ClothTexts, usualCloth } from '../../../lay/cloth-asked.ts';
import type { AskedDraft } from '../../asked-draft.ts';
import { hearing } from '../../hearing.ts';
import type { OwnState } from '../../own-state.ts';
import type { BuyShown, LaidShown, LayEffort, PlanShown } from '../../requests/lay-messages.ts';

/** How long a lay is sought. */
export const efforts = {
  short: { title: '5 seconds', seconds: 5 },
  usual: { title: '20 seconds', seconds: 20 },
  minute: { title: 'a minute', seconds: 60 },
  long: { title: 'five minutes', seconds: 300 },
  same: { title: '100 rounds: the same plan every time', seconds: 600, rounds: 100 },
} as const satisfies Readonly<Record<string, LayEffort & { readonly title: string }>>;

export type EffortName = keyof typeof efforts;

/** The cloth, and the plan on it. */
export interface OnCloth {
  /** As it was typed. */
  readonly cloth: ClothTexts;
  readonly effort: EffortName;
  /** Counts the searches. */
  readonly number: number;
  /** What the search is of. */
  readonly of: AskedDraft | undefined;
  readonly busy: { readonly cloth: string; readonly share: number } | undefined;
  readonly plans: readonly PlanShown[];
  readonly laid: LaidShown | undefined;
  readonly buy: BuyShown | undefined;
  readonly writing: boolean;
}

export type ClothAction =
  | { readonly does: 'cloth'; readonly cloth: Partial<ClothTexts> }
  | { readonly does: 'effort'; readonly effort: EffortName }
  | { readonly does: 'begin'; readonly number: number; readonly of: AskedDraft }
  | { readonly does: 'write' };

export const laidOut: OwnState<OnCloth, ClothAction> = {
  empty: {
    cloth: {
      width: '',
      cloth: usualCloth.cloth,
      selvedge: '',
      gap: '',
      shrink: '',
      stripe: '',
      stripeAlong: '',
    },
    effort: 'usual',
    number: 0,
    of: undefined,
    busy: undefined,
    plans: [],
    laid: undefined,
    buy: undefined,
    writing: false,
  },
  reduce: (own, action) => {
    switch (action.does) {
      case 'cloth':
        return { ...own, cloth: { ...own.cloth, ...action.cloth } };
      case 'effort':
        return { ...own, effort: action.effort };
      case 'begin':
        return {
          ...own,
          number: action.number,
          of: action.of,
          busy: { cloth: '', share: 0 },
          plans: [],
          laid: undefined,
          buy: undefined,
        };
      case 'write':
        return { ...own, writing: true };
    }
  },
  hear: hearing({
    asks: 'lay',
    refused: (own) => ({ ...own, busy: undefined, writing: false }),
    hears: {
      laying: (own, { cloth, share, plans }) => ({
        ...own,
        busy: { cloth, share },
        plans: plans ?? own.plans,
      }),
      'to buy': (own, { buy }) => ({ ...own, buy }),
      laid: (own, laid) => ({ ...own, busy: undefined, plans: laid.plans, laid }),
      'lay written': (own) => ({ ...own, writing: false }),
    },
  }),
};
