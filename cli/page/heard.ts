import { formFrom } from './body-form.ts';
import type { DraftAnswer, MadeGarment, PageAnswer } from './messages.ts';
import { isUntouched, type PageState, workOf } from './state.ts';

/** The state once something was answered. */
export function heard(state: PageState, answer: PageAnswer): PageState {
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

/**
 * The garment that is shown: the newest, with the lines of the one before where it came without; or the last that could be
 * drawn, with what more of it is wanted.
 */
function shownOf({ made }: PageState, { made: newest, ofLast }: DraftAnswer): MadeGarment | undefined {
  if (!newest) return made && { ...made, parts: { ...made.parts, ...ofLast } };
  return made?.parts.lines ? { ...newest, parts: { lines: made.parts.lines, ...newest.parts } } : newest;
}
