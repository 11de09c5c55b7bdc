import type { PageAnswer } from './messages.ts';

/** What one view keeps for itself, as plain data, and what happens to it. */
export interface OwnState<Own, Action> {
  readonly empty: Own;
  readonly reduce: (own: Own, action: Action) => Own;
  /** What it makes of an answer of the worker. */
  readonly hear?: (own: Own, answer: PageAnswer) => Own;
}
