import type { MeasurementName } from '../../drafts/index.ts';
import { type BodyForm, emptyForm, formFrom } from './body-form.ts';
import { noHistory, remembered, stepped, type TypedChoices } from './history.ts';
import type { Linked } from './link.ts';
import type { DraftAnswer, MadeGarment, PageAnswer } from './messages.ts';
import { type OwnAction, ownAfter, ownHeard } from './own-states.ts';
import { choicesOf, emptyState, isUntouched, type PageState, partsShown, withWork, workOf } from './state.ts';
import type { PageView } from './view-names.ts';
import { isOwnCode, isSameCode, isSameDraft } from './views/code/written-code.ts';

/** Everything that can happen to the page. */
export type PageAction =
  | OwnAction
  | { readonly does: 'view'; readonly view: PageView }
  | { readonly does: 'widen'; readonly wide: boolean }
  | { readonly does: 'measure'; readonly name: MeasurementName; readonly text: string }
  | {
      readonly does: 'say';
      readonly about: Partial<
        Pick<BodyForm, 'name' | 'age' | 'units' | 'cup' | 'reconcile' | 'sizes' | 'rest'>
      >;
    }
  /** What is more likely than what was written, for some measurements that contradict others. */
  | { readonly does: 'take sizes'; readonly sizes: BodyForm['sizes'] }
  | { readonly does: 'be sure'; readonly name: MeasurementName; readonly sure: boolean }
  /** What was there before a file was opened is there again. */
  | { readonly does: 'take back' }
  | { readonly does: 'leave out the rest' }
  | { readonly does: 'choose garment'; readonly garment: string }
  /** The code as it is written draws the garment, which it calls so, or the program's own draft does again. */
  | { readonly does: 'draw by code'; readonly garment: string }
  | { readonly does: 'draw by the program' }
  /** Without a text: as the draft has it by itself. */
  | { readonly does: 'choose'; readonly name: string; readonly text: string | undefined }
  | { readonly does: 'choose nothing' }
  /** A link was opened: what it says takes the place of what is there. */
  | { readonly does: 'follow'; readonly linked: Linked }
  /** What was being changed is left: what comes next can be undone apart. */
  | { readonly does: 'settle' }
  /** Nothing has been changed for a while: there is time to write the sheet and walk it. */
  | { readonly does: 'pause' }
  | { readonly does: 'undo' | 'redo' }
  | { readonly does: 'link body'; readonly linksBody: boolean }
  | { readonly does: 'seek'; readonly sought: string }
  | { readonly does: 'note'; readonly notice: string | undefined }
  | { readonly does: 'forget' }
  | { readonly does: 'hear'; readonly answer: PageAnswer };

/**
 * The state after an action. Where the work has changed it can be undone, and a new draft is asked for, by its number; one is
 * asked for too where a view wants more of it than is there.
 */
export function reduce(state: PageState, action: PageAction): PageState {
  const changed = withItsOwnCode(after(state, action), state, action);
  const next = { ...changed, history: historyAfter(state, changed, action) };
  const parts = [...partsShown(next), ...(action.does === 'pause' && next.made ? (['proof'] as const) : [])];
  if (!isSameGarment(next, state))
    return { ...next, asked: state.asked + 1, wanted: parts, earlier: earlierOf(state, next) };
  if (parts.every((part) => state.wanted.includes(part))) return next;
  return { ...next, asked: state.asked + 1, wanted: [...new Set([...state.wanted, ...parts])] };
}

/** What is drawn in grey under the new: what was there when the change began. */
function earlierOf(state: PageState, next: PageState): PageState['earlier'] {
  if (next.garment !== state.garment) return undefined;
  const { changing } = next.history;
  const goesOn = changing !== undefined && changing === state.history.changing;
  return (goesOn ? state.earlier : undefined) ?? state.made?.parts.lines;
}

/** Whether what is drawn is the same. */
const isSameGarment = (a: PageState, b: PageState): boolean =>
  a.form === b.form &&
  a.garment === b.garment &&
  a.choices === b.choices &&
  a.byCode === b.byCode &&
  (!a.byCode || isSameCode(a.own.code, b.own.code));

const isSameWork = (a: PageState, b: PageState): boolean =>
  isSameGarment(a, b) && a.own.learn.turned === b.own.learn.turned && isSameCode(a.own.code, b.own.code);

/** Other code than drew before draws nothing before somebody says so. */
function withItsOwnCode(next: PageState, before: PageState, { does }: PageAction): PageState {
  if (!next.byCode || does !== 'within') return next;
  const { code } = next.own;
  const goesOn = isOwnCode(code) && !code.strange && isSameDraft(code.of, before.own.code.of);
  return goesOn ? next : byProgram(next, before.own.code.of?.name);
}

/** Drawn by the program's own draft of that name, or of the garment that was chosen. */
function byProgram(state: PageState, name: string | undefined): PageState {
  const garment = [state.garment, name].find((each) => state.garments.some((known) => known.name === each));
  return { ...state, byCode: false, garment: garment ?? emptyState.garment };
}

/** Typing and sliding at one thing is one step. */
const changing = (action: PageAction): string | undefined => {
  switch (action.does) {
    case 'measure':
    case 'choose':
      return `${action.does} ${action.name}`;
    case 'say':
      return `say ${Object.keys(action.about).join()}`;
    case 'within':
      if (action.view === 'code' && action.what.does === 'write') return `write ${action.what.file}`;
      return action.view === 'learn' && action.what.does === 'turn rule'
        ? `turn ${action.what.id}`
        : undefined;
    default:
      return undefined;
  }
};

function historyAfter(state: PageState, next: PageState, action: PageAction): PageState['history'] {
  if (next.history !== state.history || isSameWork(next, state)) return next.history;
  return remembered(state.history, workOf(state), changing(action));
}

function after(state: PageState, action: PageAction): PageState {
  const { form } = state;
  switch (action.does) {
    case 'view':
      return { ...state, view: action.view, notice: undefined, before: undefined, history: settled(state) };
    case 'widen':
      return { ...state, wide: action.wide };
    case 'measure': {
      const { [action.name]: _, ...others } = form.sizes;
      const sizes = action.text === '' ? others : { ...others, [action.name]: action.text };
      return { ...state, form: { ...form, sizes } };
    }
    case 'say':
      return { ...state, form: { ...form, ...action.about } };
    case 'take sizes':
      return {
        ...state,
        form: { ...form, sizes: { ...form.sizes, ...action.sizes } },
        notice: 'Taken over, as if it had been measured. Undo takes it back.',
      };
    case 'be sure': {
      const others = form.sure.filter((name) => name !== action.name);
      return { ...state, form: { ...form, sure: action.sure ? [...others, action.name] : others } };
    }
    case 'take back':
      return {
        ...(state.before ? withWork(state, state.before) : state),
        before: undefined,
        notice: undefined,
      };
    case 'leave out the rest': {
      const { fitting } = form.rest;
      return { ...state, form: { ...form, rest: fitting === undefined ? {} : { fitting } } };
    }
    case 'choose garment':
      return { ...state, garment: action.garment, byCode: false };
    case 'draw by code':
      return { ...state, garment: action.garment, byCode: true };
    case 'draw by the program':
      return byProgram(state, state.own.code.of?.name);
    case 'choose': {
      const { [action.name]: _, ...others } = choicesOf(state);
      return withChoices(
        state,
        action.text === undefined ? others : { ...others, [action.name]: action.text },
      );
    }
    case 'choose nothing':
      return withChoices(state, {});
    case 'follow': {
      const { view, garment, choices, form: body } = action.linked;
      const before =
        isUntouched(state) && Object.keys(state.choices).length === 0 ? undefined : workOf(state);
      return {
        ...state,
        ...(body ? { form: body } : {}),
        garment,
        byCode: false,
        choices: { ...state.choices, [garment]: choices },
        view,
        before,
        notice: `The choices${body ? ' and measurements' : ''} of the link are open.`,
      };
    }
    case 'settle':
      return { ...state, history: settled(state) };
    case 'pause':
      return state.earlier ? { ...state, earlier: undefined } : state;
    case 'undo':
    case 'redo': {
      const step = stepped(state.history, workOf(state), action.does);
      return step
        ? { ...withWork(state, step.work), history: step.history, notice: undefined, before: undefined }
        : state;
    }
    case 'within':
      return { ...state, own: ownAfter(state.own, action) };
    case 'link body':
      return { ...state, linksBody: action.linksBody };
    case 'seek':
      return { ...state, sought: action.sought };
    case 'note':
      return { ...state, notice: action.notice, before: undefined };
    case 'forget':
      return {
        ...emptyState,
        view: state.view,
        wide: state.wide,
        // Another than it was, so that nothing is remembered of what is deleted.
        history: { ...noHistory },
        garments: state.garments,
        asked: state.asked,
        wanted: state.wanted,
        deleted: state.asked,
        form: { ...emptyForm },
        notice: 'All that was kept is deleted.',
      };
    case 'hear':
      return heard({ ...state, own: ownHeard(state.own, action.answer) }, action.answer);
  }
}

const settled = ({ history }: PageState): PageState['history'] =>
  history.changing === undefined ? history : { ...history, changing: undefined };

/** The garment that is shown: the newest, with the lines of the one before where it came without. */
const shownOf = ({ made }: PageState, { made: newest }: DraftAnswer): MadeGarment | undefined =>
  newest && made?.parts.lines
    ? { ...newest, parts: { lines: made.parts.lines, ...newest.parts } }
    : (newest ?? made);

const withChoices = (state: PageState, choices: TypedChoices): PageState => ({
  ...state,
  choices: { ...state.choices, [state.garment]: choices },
});

function heard(state: PageState, answer: PageAnswer): PageState {
  switch (answer.kind) {
    case 'garments':
      return { ...state, garments: answer.garments };
    case 'drafted':
      return answer.number <= state.deleted ? state : { ...state, answer, made: shownOf(state, answer) };
    case 'opened':
      return {
        ...state,
        form: formFrom(answer.body),
        before: isUntouched(state) ? undefined : workOf(state),
        notice: `${answer.file} is open.`,
      };
    case 'fitted': {
      const { fitting: _, ...others } = state.form.rest;
      const rest = answer.fitting.length > 0 ? { ...others, fitting: answer.fitting } : others;
      return {
        ...state,
        form: { ...state.form, rest },
        notice: 'The fitting has it now, and the pieces follow. Undo takes it back.',
      };
    }
    case 'refused':
      return { ...state, notice: answer.message, before: undefined };
    default:
      return state;
  }
}
