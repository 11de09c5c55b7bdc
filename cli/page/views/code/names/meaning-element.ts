import type { NameMeaning } from './name-meaning.ts';

/** What a name means, to be shown beside it. All of it is text, never markup. */
export function meaningElement({ signature, says }: NameMeaning): HTMLElement {
  const element = document.createElement('div');
  element.className = 'cm-meaning';
  const code = document.createElement('code');
  code.textContent = signature;
  element.append(code);
  if (says !== '') {
    const words = document.createElement('p');
    words.textContent = says;
    element.append(words);
  }
  return element;
}
