import type { FittingChange, WordTable } from '../../../drafts/index.ts';
import type { WornSide } from '../../wear/worn-sides.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { PageIssue } from '../page-issue.ts';
import type { WornScene } from '../worn/scene.ts';

/** What is asked about wearing a garment; `number` is told again with every answer. A new garment ends the one before. */
export type WearRequest = { readonly kind: 'wear'; readonly number: number } & (
  | {
      readonly does: 'begin';
      readonly asked: AskedDraft;
      readonly cloth: string;
      /** Size of the triangles, mm. */
      readonly spacing: number;
    }
  | { readonly does: 'stop' }
);

export type WearAnswer =
  | { readonly kind: 'wearing'; readonly number: number; readonly share: number }
  | {
      readonly kind: 'worn';
      readonly number: number;
      readonly worn: WornShown | undefined;
      readonly issues: readonly PageIssue[];
    };

/** A worn garment as it is shown, and what is found on it. */
export interface WornShown {
  readonly scene: WornScene;
  /** The same from three sides, for a browser that shows nothing in space. */
  readonly sides: readonly WornSide[];
  /** What was put on, where it is another than was asked for. */
  readonly instead: string | undefined;
  readonly lead: string;
  readonly findings: readonly Finding[];
  /** What there is no doubt about. */
  readonly sure: readonly FittingChange[];
  readonly figures: WordTable;
  readonly cannotKnow: readonly string[];
}

/** Something that is not as it should be, in a fitter's words. */
export interface Finding {
  readonly words: string;
  readonly sure: boolean;
  readonly alter: { readonly words: string; readonly change: FittingChange } | undefined;
}
