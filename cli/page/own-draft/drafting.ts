import type { Draft } from '../../../drafts/index.ts';
import type { OwnDraft } from './own-drafts.ts';

/**
 * The draft that was asked for, and how to do something with it. The program's own is drawn here and now; code that somebody
 * wrote is drawn elsewhere, so that what wants a drawing is done again once that is there.
 */
export interface Drafting {
  readonly draft: Draft;
  /** Does something pure with the draft. */
  readonly done: <Value>(act: () => Value) => Promise<Value>;
  /** Draws ahead all that something would want, telling how far it is; nothing where it is drawn here and now. */
  readonly ahead: (act: () => void, reached: (done: number, of: number) => void) => Promise<void>;
  /** Code that is run elsewhere, where it is that. */
  readonly own: OwnDraft | undefined;
}
