import { emptyForm } from './body-form.ts';
import { heard } from './heard.ts';
import { noHistory, remembered, stepped, type TypedChoices } from './history.ts';
import { forgotten, ownAfter, ownHeard } from './own-states.ts';
import type { PageAction } from './page-action.ts';
import { choicesOf, emptyState, isUntouched, type PageState, partsShown, withWork, workOf } from './state.ts';
import { isOwnCode, isSameCode, isSameDraft } from './views/code/written-code.ts';

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
    case 'keeps':
      return { ...state, keeps: action.keeps };
    case 'forget':
      return {
        ...emptyState,
        view: state.view,
        wide: state.wide,
        keeps: state.keeps,
        own: forgotten(state.own),
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

const withChoices = (state: PageState, choices: TypedChoices): PageState => ({
  ...state,
  choices: { ...state.choices, [state.garment]: choices },
});
