import type { PageAnswer } from './messages.ts';
import type { OwnState } from './own-state.ts';
import { checking } from './views/checks/own.ts';
import { choosing } from './views/choose/own.ts';
import { laidOut } from './views/cloth/own.ts';
import { coded } from './views/code/own.ts';
import { learnt } from './views/learn/own.ts';
import { measuring } from './views/measure/own.ts';
import { looked } from './views/pieces/own.ts';
import { sized } from './views/sizes/own.ts';
import { taking } from './views/take/own.ts';
import { wearing } from './views/worn/own.ts';

/**
 * The views that keep something for themselves: a line each. It is theirs alone, and is neither undone nor kept till tomorrow,
 * but for turned rules and written code (`workOf`).
 */
const table = {
  checks: checking,
  choose: choosing,
  cloth: laidOut,
  measure: measuring,
  pieces: looked,
  sizes: sized,
  take: taking,
  worn: wearing,
  learn: learnt,
  code: coded,
};

type Table = typeof table;
type OwnOf<Entry> = Entry extends OwnState<infer Own, never> ? Own : never;
type ActionOf<Entry> = Entry extends { readonly reduce: (own: never, action: infer Action) => unknown }
  ? Action
  : never;

export type OwnStates = { readonly [View in keyof Table]: OwnOf<Table[View]> };

/** Something that happens within one view. */
export type OwnAction = {
  readonly [View in keyof Table]: {
    readonly does: 'within';
    readonly view: View;
    readonly what: ActionOf<Table[View]>;
  };
}[keyof Table];

/** Of any one entry, once its own types are out of sight. */
type Entry = OwnState<unknown, unknown>;

const entries = Object.entries(table) as unknown as readonly (readonly [keyof Table, Entry])[];

const each = (change: (entry: Entry, view: keyof Table) => unknown): OwnStates =>
  Object.fromEntries(entries.map(([view, entry]) => [view, change(entry, view)])) as unknown as OwnStates;

export const emptyOwn: OwnStates = each(({ empty }) => empty);

/** What each view begins with once all is deleted: where questions are counted it counts on, so that no answer to an earlier one is heard. */
export const forgotten = (own: OwnStates): OwnStates =>
  each(({ empty }, view) => {
    const { [view]: before } = own;
    return 'number' in before ? { ...(empty as object), number: before.number + 1 } : empty;
  });

export function ownAfter(own: OwnStates, { view, what }: OwnAction): OwnStates {
  const next = (table[view] as Entry).reduce(own[view], what);
  return next === own[view] ? own : each((_, name) => (name === view ? next : own[name]));
}

export function ownHeard(own: OwnStates, answer: PageAnswer): OwnStates {
  const next = each(({ hear }, view) => hear?.(own[view], answer) ?? own[view]);
  return entries.some(([view]) => next[view] !== own[view]) ? next : own;
}
