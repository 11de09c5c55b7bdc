import type { WordTable } from '../../../drafts/index.ts';
import type { ClothTexts } from '../../lay/cloth-asked.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { PageIssue } from '../page-issue.ts';
import type { TakenBytes } from '../taken-file.ts';

/** What is asked about laying a garment; `number` is told again with every answer. A new search ends the one before. */
export type LayRequest = { readonly kind: 'lay'; readonly number: number } & (
  | ({ readonly does: 'begin'; readonly asked: AskedDraft; readonly cloth: ClothTexts } & LayEffort)
  | { readonly does: 'stop' }
  | { readonly does: 'take' }
);

export interface LayEffort {
  readonly seconds: number;
  /** For the same plan every time. */
  readonly rounds?: number;
}

export type LayAnswer =
  | {
      readonly kind: 'laying';
      readonly number: number;
      /** The cloth that is laid, and how much of the search for it is over, 0 to 1. */
      readonly cloth: string;
      readonly share: number;
      /** The plans so far, where one of them is new. */
      readonly plans?: readonly PlanShown[];
    }
  | { readonly kind: 'to buy'; readonly number: number; readonly buy: BuyShown }
  | ({ readonly kind: 'laid'; readonly number: number } & LaidShown)
  | { readonly kind: 'lay written'; readonly number: number; readonly handed: readonly TakenBytes[] };

/** How a search came out. */
export interface LaidShown {
  readonly plans: readonly PlanShown[];
  readonly table: WordTable | undefined;
  readonly stripes: readonly string[];
  readonly issues: readonly PageIssue[];
}

/** The plan of one cloth. */
export interface PlanShown {
  readonly cloth: string;
  readonly svg: string;
  readonly words: string;
  /** The same for who cannot see the plan, with what is wrong with it. */
  readonly alt: string;
  readonly buy: string;
}

/** What is to be cut and bought. */
export interface BuyShown {
  readonly cut: WordTable;
  readonly cloth: WordTable;
  readonly besides: WordTable;
  readonly threadNote: string;
  /** Whether cloth was planned, or only what no lay goes under is known. */
  readonly planned: boolean;
}
