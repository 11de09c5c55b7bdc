import type { AskedDraft } from '../asked-draft.ts';
import type { GarmentChoices } from '../garment-choices.ts';
import type { PageIssue } from '../page-issue.ts';
import type { Port } from './port.ts';

/** Hands a worker the way to code that draws, or says why there is none. The one before is not drawn by any more. */
export interface OwnDraftRequest {
  readonly kind: 'own draft';
  /** What it is asked for by (`AskedDraft`). */
  readonly key: NonNullable<AskedDraft['code']>;
  /** An end of a channel to where it is run. */
  readonly port?: Port;
  readonly problem?: PageIssue;
}

/** What such a draft says of itself, once that is known, or why it can draw nothing. */
export interface OwnDraftAnswer {
  readonly kind: 'own draft';
  readonly key: string;
  readonly garment?: GarmentChoices;
  /** It ran too long, or answered what is no answer: where it runs is to be closed. */
  readonly ended?: PageIssue;
}
