import { garments, measurementNames } from '../../../drafts/index.ts';
import { letItStand, spoken } from '../page-words.ts';

/** What files call measurements and choices, where that is not a word as it is spoken. */
const fileNames: ReadonlySet<string> = new Set(
  [
    ...measurementNames,
    ...Object.values(garments).flatMap(({ choices }) => choices.map(({ name }) => name)),
  ].filter((name) => /[A-Z]/.test(name)),
);

/**
 * What is found, as it is said on the page: there she has fields, choices and ticks before her, and writes no file. What is
 * said of the code of a draft keeps the names that stand in it.
 */
export const inPageWords = (code: string, message: string): string =>
  code.startsWith('draft-') || code === 'shaped-by-incomplete'
    ? message
    : message
        .replace(/add sure: \[\w+\]/, `tick “${letItStand}”`)
        .replace('write reconcile: true in her file:', 'tick under Measure that they cannot be taken again:')
        .replace('Those under sure: [...] stay', `What is ticked “${letItStand}” stays`)
        .replace(
          /but the file says units: (\w+)\. Write units: (\w+)\./,
          'but $1 is chosen as her unit. Choose $2.',
        )
        .replace(/“(\w+)”|\b[a-z]+[A-Z]\w+/g, (found, quoted: string | undefined) =>
          fileNames.has(quoted ?? found) ? spoken(quoted ?? found) : found,
        );
