/* What is kept in the browser until tomorrow. A browser that keeps nothing still drafts. */

const key = 'bodkin';

/** What was kept; none where the browser keeps nothing. */
export function storedText(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Keeps this in the place of what was kept; nothing, where there is none. */
export function storeText(text: string | undefined): void {
  try {
    if (text === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  } catch {
    // There is nothing to do: it is kept nowhere.
  }
}
