import type { AskedDraft } from '../asked-draft.ts';
import type { GarmentChoices } from '../garment-choices.ts';
import type { PageIssue } from '../page-issue.ts';
import type { Port } from './port.ts';

/** Tells a worker how it stands with code that draws. The one before is not drawn by any more. */
export interface OwnDraftRequest {
  readonly kind: 'own draft';
  /** What it is asked for by (`AskedDraft`). */
  readonly key: NonNullable<AskedDraft['code']>;
  readonly is: /** It runs, at the other end of a channel. */
    | { readonly how: 'running'; readonly port: Port }
    /** It cannot be run, or was ended. */
    | { readonly how: 'stopped'; readonly problem: PageIssue }
    /** Other code draws since, or none. */
    | { readonly how: 'over' };
}

/** What such a draft says of itself, once that is known, or why it can draw nothing. */
export interface OwnDraftAnswer {
  readonly kind: 'own draft';
  readonly key: string;
  readonly garment?: GarmentChoices;
  /** It ran too long, or answered what is no answer: where it runs is to be closed. */
  readonly ended?: PageIssue;
}
