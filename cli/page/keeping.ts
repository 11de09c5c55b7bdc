import { keptText } from './kept.ts';
import { isUntouched, type PageState } from './state.ts';

/** Where the browser keeps a text until tomorrow, for all pages of this place together. */
export interface TextStore {
  /** What is kept; none where the browser keeps nothing. */
  readonly text: () => string | null;
  /** Keeps this in the place of what was kept; nothing, where there is none. Answers whether it could. */
  readonly keep: (text: string | undefined) => boolean;
}

/** Keeps what was done on one page. */
export interface Keeping {
  /** Answers whether it could be kept. */
  readonly keep: (state: PageState) => boolean;
  readonly forget: (state: PageState) => void;
}

/**
 * Keeps the work of a page as it goes on from what was kept. The page may be open twice: what was kept or deleted on the other
 * since stays so for as long as nothing is done on this one.
 */
export function keepingFrom(begun: PageState, store: TextStore): Keeping {
  let known = store.text();
  let done = workText(begun);
  const put = (text: string | undefined, work: string): boolean => {
    const could = store.keep(text);
    if (could) [known, done] = [text ?? null, work];
    return could;
  };
  return {
    keep: (state) => {
      const work = workText(state);
      if (work === done && store.text() !== known) return true;
      const text = isEmpty(state) ? undefined : keptText(state);
      return (text ?? null) === known || put(text, work);
    },
    forget: (state) => {
      put(undefined, workText(state));
    },
  };
}

const isEmpty = (state: PageState): boolean => isUntouched(state) && Object.keys(state.choices).length === 0;

/** What is kept but for the view: to look at something is no work. */
const workText = (state: PageState): string => keptText({ ...state, view: 'measure' });
