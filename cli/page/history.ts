import type { TurnedRules } from '../../drafts/index.ts';
import type { BodyForm } from './body-form.ts';
import type { WrittenCode } from './views/code/written-code.ts';

/** Choices that were made, as they were typed, by name. */
export type TypedChoices = Readonly<Record<string, string>>;

/** What she made, and can undo: measurements with a fitting, garment and choices, rules that are turned, code that is changed. */
export interface Work {
  readonly form: BodyForm;
  readonly garment: string;
  /** By garment: each keeps its own. */
  readonly choices: Readonly<Record<string, TypedChoices>>;
  /** Rules with other values than the draft gives them, in the lesson alone. */
  readonly turned: TurnedRules;
  readonly code: WrittenCode;
  /** Whether the garment is drawn by that code, in the place of the program's own. */
  readonly byCode: boolean;
}

/** How the work was before, and how it was before something was undone; the last of each is the nearest. */
export interface History {
  readonly past: readonly Work[];
  readonly future: readonly Work[];
  /** What is being changed: while it is the same thing, all that is typed at it is one step. */
  readonly changing: string | undefined;
}

export const noHistory: History = { past: [], future: [], changing: undefined };

/** So many steps can be undone. */
const most = 200;

/** The history once the work is no longer as it was. */
export function remembered(history: History, before: Work, changing: string | undefined): History {
  if (changing !== undefined && changing === history.changing) return { ...history, future: [] };
  return { past: [...history.past, before].slice(-most), future: [], changing };
}

/** One step back or on: the work as it was then, or nothing where there is no such step. */
export function stepped(
  { past, future }: History,
  now: Work,
  way: 'undo' | 'redo',
): { readonly work: Work; readonly history: History } | undefined {
  const work = (way === 'undo' ? past : future).at(-1);
  if (!work) return undefined;
  const history =
    way === 'undo'
      ? { past: past.slice(0, -1), future: [...future, now] }
      : { past: [...past, now], future: future.slice(0, -1) };
  return { work, history: { ...history, changing: undefined } };
}
