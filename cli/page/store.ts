import type { TextStore } from './keeping.ts';

const key = 'bodkin';

/** What is kept in the browser until tomorrow. A browser that keeps nothing still drafts. */
export const store: TextStore = {
  text: () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  keep: (text) => {
    try {
      if (text === undefined) localStorage.removeItem(key);
      else localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  },
};
