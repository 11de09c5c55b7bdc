import type { MeasurementName } from '../../drafts/index.ts';
import { type BodyForm, emptyForm, formFrom } from './body-form.ts';
import type { PageAnswer } from './messages.ts';
import {
  choicesOf,
  emptyState,
  isUntouched,
  type PageState,
  type PageView,
  type TypedChoices,
  wantsPieces,
} from './state.ts';

/** Everything that can happen to the page. */
export type PageAction =
  | { readonly does: 'view'; readonly view: PageView }
  | { readonly does: 'widen'; readonly wide: boolean }
  | { readonly does: 'measure'; readonly name: MeasurementName; readonly text: string }
  | {
      readonly does: 'say';
      readonly about: Partial<Pick<BodyForm, 'name' | 'age' | 'units' | 'cup' | 'reconcile'>>;
    }
  | { readonly does: 'be sure'; readonly name: MeasurementName; readonly sure: boolean }
  /** What was in the form before a file was opened stands in it again. */
  | { readonly does: 'take back' }
  | { readonly does: 'leave out the rest' }
  | { readonly does: 'choose garment'; readonly garment: string }
  /** Without a text: as the draft has it by itself. */
  | { readonly does: 'choose'; readonly name: string; readonly text: string | undefined }
  | { readonly does: 'choose nothing' }
  | { readonly does: 'seek'; readonly sought: string }
  | { readonly does: 'show piece'; readonly piece: string | undefined }
  | { readonly does: 'zoom'; readonly zoom: number }
  | { readonly does: 'note'; readonly notice: string | undefined }
  | { readonly does: 'forget' }
  | { readonly does: 'hear'; readonly answer: PageAnswer };

/** How far the drawing can be enlarged. */
export const largestZoom = 16;

/** The state after an action. A new draft is asked for, by its number, where what it would be of has changed. */
export function reduce(state: PageState, action: PageAction): PageState {
  const next = after(state, action);
  const drawsAnew =
    next.form !== state.form ||
    next.garment !== state.garment ||
    next.choices !== state.choices ||
    (wantsPieces(next) && !wantsPieces(state));
  return drawsAnew ? { ...next, asked: state.asked + 1 } : next;
}

function after(state: PageState, action: PageAction): PageState {
  const { form } = state;
  switch (action.does) {
    case 'view':
      return { ...state, view: action.view, notice: undefined, before: undefined };
    case 'widen':
      return { ...state, wide: action.wide };
    case 'measure': {
      const { [action.name]: _, ...others } = form.sizes;
      const sizes = action.text === '' ? others : { ...others, [action.name]: action.text };
      return { ...state, form: { ...form, sizes } };
    }
    case 'say':
      return { ...state, form: { ...form, ...action.about } };
    case 'be sure': {
      const others = form.sure.filter((name) => name !== action.name);
      return { ...state, form: { ...form, sure: action.sure ? [...others, action.name] : others } };
    }
    case 'take back':
      return { ...state, form: state.before ?? form, before: undefined, notice: undefined };
    case 'leave out the rest': {
      const { fitting } = form.rest;
      return { ...state, form: { ...form, rest: fitting === undefined ? {} : { fitting } } };
    }
    case 'choose garment':
      return { ...state, garment: action.garment, piece: undefined, zoom: 1 };
    case 'choose': {
      const { [action.name]: _, ...others } = choicesOf(state);
      return withChoices(
        state,
        action.text === undefined ? others : { ...others, [action.name]: action.text },
      );
    }
    case 'choose nothing':
      return withChoices(state, {});
    case 'seek':
      return { ...state, sought: action.sought };
    case 'show piece':
      return { ...state, piece: action.piece, zoom: 1 };
    case 'zoom':
      return { ...state, zoom: Math.min(largestZoom, Math.max(1, action.zoom)) };
    case 'note':
      return { ...state, notice: action.notice };
    case 'forget':
      return {
        ...emptyState,
        view: state.view,
        wide: state.wide,
        garments: state.garments,
        asked: state.asked,
        deleted: state.asked,
        form: { ...emptyForm },
        notice: 'All that was kept is deleted.',
      };
    case 'hear':
      return heard(state, action.answer);
  }
}

const withChoices = (state: PageState, choices: TypedChoices): PageState => ({
  ...state,
  choices: { ...state.choices, [state.garment]: choices },
});

function heard(state: PageState, answer: PageAnswer): PageState {
  switch (answer.kind) {
    case 'garments':
      return { ...state, garments: answer.garments };
    case 'drafted':
      return answer.number <= state.deleted ? state : { ...state, answer, made: answer.made ?? state.made };
    case 'opened':
      return {
        ...state,
        form: formFrom(answer.body),
        before: isUntouched(state) ? undefined : state.form,
        notice: `${answer.file} is open.`,
      };
    case 'refused':
      return { ...state, notice: answer.message };
    case 'written':
      return state;
  }
}
