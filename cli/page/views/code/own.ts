import type { TurnedRules } from '../../../../drafts/index.ts';
import type { DraftFiles } from '../../../own-draft/draft-files.ts';
import type { GarmentChoices } from '../../garment-choices.ts';
import type { OwnState } from '../../own-state.ts';
import type { CodeProblem, LinkAnswer } from '../../requests/link.ts';
import type { Coding, Held } from './coding.ts';
import type { CodeIssue, RanDraft } from './questions.ts';
import { isOwnCode, isSameDraft, type WrittenCode } from './written-code.ts';

/** How an edited draft stands. */
export interface Coded extends WrittenCode {
  /** The file that is in the editor. */
  readonly file: string;
  /** The line of it that somebody was led to last, from 1; another object each time. */
  readonly sought: { readonly line: number } | undefined;
  /** Rules that were turned in the lesson and are to be written into the code. */
  readonly turned: TurnedRules | undefined;
  readonly shows: 'code' | 'difference';
  /** Whether types are checked as one writes, whoever's code it is. */
  readonly typed: boolean;
  /** The step whose line the cursor is in, by its number. */
  readonly step: number | undefined;
  /** The files as one script, as far as they could be read. */
  readonly linked: LinkAnswer | undefined;
  /** What the script was answered for that was run last. */
  readonly ranKey: string;
  readonly ran: RanDraft | undefined;
  /** The last that could be drawn. */
  readonly drawn: RanDraft | undefined;
  /** What ended it, where it was ended. */
  readonly problem: CodeProblem | undefined;
  readonly held: Held | undefined;
  /** What it says of itself where it draws in the other views, by the key of its code; why it cannot, else. */
  readonly drawsViews: DrawsViews | undefined;
}

/** A draft of one's own that the other views are drawn by. */
export interface DrawsViews {
  readonly key: string;
  readonly garment: GarmentChoices | undefined;
}

const noCode: Coded = {
  of: undefined,
  original: {},
  changed: {},
  file: '',
  sought: undefined,
  strange: false,
  turned: undefined,
  shows: 'code',
  typed: false,
  step: undefined,
  linked: undefined,
  ranKey: '',
  ran: undefined,
  drawn: undefined,
  problem: undefined,
  held: undefined,
  drawsViews: undefined,
};

/** Nothing yet of other code; how one writes stays as it is. */
const otherCode = ({ typed }: Coded): Coded => ({ ...noCode, typed });

export const coded: OwnState<Coded, Coding> = {
  empty: noCode,
  reduce: after,
  hear: (own, answer) => {
    if (answer.kind === 'linked' && answer.asks === 'editor') return { ...own, linked: answer };
    if (answer.kind !== 'own draft') return own;
    const before = own.drawsViews?.key === answer.key ? own.drawsViews.garment : undefined;
    return { ...own, drawsViews: { key: answer.key, garment: answer.garment ?? before } };
  },
};

/** The code as it was written at another time, to be seen and run again. */
export function restored(own: Coded, code: WrittenCode): Coded {
  if (!isOwnCode(code))
    return own.of?.kind === 'own' ? otherCode(own) : { ...own, changed: {}, held: undefined };
  const { of, original, changed, strange } = code;
  if (!isSameDraft(own.of, of)) {
    const [file = ''] = Object.keys(original);
    return { ...otherCode(own), of, original, changed, strange, file };
  }
  const loaded = of?.kind === 'own' || Object.keys(own.original).length === 0 ? original : own.original;
  return { ...own, original: loaded, changed, strange, held: undefined };
}

function after(own: Coded, action: Coding): Coded {
  switch (action.does) {
    case 'begin': {
      // A file may be called as one that was allowed to run.
      const same = isSameDraft(own.of, action.of) && !action.strange;
      const kept = same ? onlyChanged(own.changed, action.original) : {};
      const file = same && own.file in action.original ? own.file : action.file;
      const { of, original } = action;
      return same
        ? { ...own, of, original, changed: kept, file }
        : { ...otherCode(own), of, original, file, strange: action.strange, turned: own.turned };
    }
    case 'leave':
      return otherCode(own);
    case 'take over rules': {
      const { of } = action;
      return isSameDraft(own.of, of)
        ? { ...own, turned: action.turned }
        : { ...otherCode(own), of, turned: action.turned };
    }
    case 'rules are taken over':
      return written(
        { ...own, turned: undefined, file: action.file ?? own.file, shows: 'difference' },
        action.files,
      );
    case 'write':
      return written(own, { [action.file]: action.text });
    case 'show file':
      return { ...own, file: action.file, step: undefined };
    case 'lead to':
      return { ...own, file: action.file, step: undefined, sought: { line: action.line } };
    case 'back to the original': {
      if (action.file === undefined) return { ...own, changed: {}, held: undefined };
      const { [action.file]: _, ...changed } = own.changed;
      return { ...own, changed, held: undefined };
    }
    case 'show':
      return { ...own, shows: action.shows };
    case 'check types':
      return { ...own, typed: action.typed };
    case 'allow':
      return { ...own, strange: false };
    case 'go to step':
      return { ...own, step: action.step };
    case 'ran': {
      const { key, ran } = action;
      return {
        ...own,
        ranKey: key,
        ran,
        problem: undefined,
        drawn: ran.sheet === undefined ? own.drawn : ran,
      };
    }
    case 'ended':
      return { ...own, ranKey: action.key, ran: undefined, problem: action.problem };
    case 'hold':
      return { ...own, held: { ends: action.ends, cases: action.cases } };
    case 'held': {
      const cases = own.held?.cases.map((each, i) =>
        i === action.at ? { ...each, came: action.came } : each,
      );
      return own.held && cases ? { ...own, held: { ...own.held, cases } } : own;
    }
    case 'let go':
      return { ...own, held: undefined };
  }
}

/** Files as they are written now; what is as it was counts as unchanged. What they were held to before says no more. */
const written = (own: Coded, files: DraftFiles): Coded => ({
  ...own,
  changed: onlyChanged({ ...own.changed, ...files }, own.original),
  held: undefined,
});

const onlyChanged = (changed: DraftFiles, original: DraftFiles): DraftFiles =>
  Object.fromEntries(
    Object.entries(changed).filter(([file, text]) => file in original && original[file] !== text),
  );

/** All that is wrong with the code as it was run last, gravest first, each with its place where that is known. */
export function codeIssues({ linked, ran, problem }: Coded): readonly CodeIssue[] {
  const found = linked?.problem ?? problem;
  if (found) {
    const { message, file, line } = found;
    const source = file !== undefined && line !== undefined ? { source: { file, line } } : {};
    return [{ code: 'draft-not-loaded', severity: 'error', path: '', message, ...source }];
  }
  return ran?.issues.filter(({ severity }) => severity === 'error') ?? [];
}
