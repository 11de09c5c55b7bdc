import { cupDifferences } from './cup.ts';
import { cupLetters } from './cup-letters.ts';

/** A size as it stands in a bra: a band and the letters of a cup, or letters alone. */
const size = /^\s*(\d{2,3})?\s*([A-Za-z]{1,3})\s*$/;

/** Bands up to this are British or American ones, in inches with some added; above, EN 13402's, in cm. */
const greatestInInches = 56;

/**
 * The letters of British and American makers that EN 13402 has not, each as the letter that usually fits the same bust.
 * From memory: makers differ.
 */
const otherLetters: Readonly<Record<string, string>> = { DD: 'E', DDD: 'F', FF: 'H', GG: 'J' };

/** British letters beyond D come later than those of EN 13402 of the same name. From memory. */
const britishLetters: Readonly<Record<string, string>> = { ...otherLetters, E: 'F', F: 'G', G: 'I' };

/** Which letter of EN 13402 a cup or a bra size usually comes to; nothing where it says none. */
export function usualCup(written: string): string | undefined {
  const [, band, letters = ''] = size.exec(written) ?? [];
  const letter = letters.toUpperCase();
  const british = band !== undefined && Number(band) <= greatestInInches;
  const meant = (british ? britishLetters[letter] : otherLetters[letter]) ?? letter;
  return cupLetters.includes(meant) ? meant : undefined;
}

const table = `A letter stands for bust girth less under-bust girth: ${cupDifferences} (EN 13402). Makers and countries give the same difference other letters.`;

function whichToWrite(written: string): string {
  const cup = usualCup(written);
  const best = 'Best measure directly below the breasts, and write underBustGirth';
  return cup === undefined
    ? `${best}; or write one of these letters.`
    : `${best}; or write cup: ${cup}, which ${written.trim()} usually comes to.`;
}

/** Why a cup is refused: which difference each letter means, and which to write. */
export const cupRefused = (written: string): string =>
  `${written} is no cup of EN 13402. ${table} ${whichToWrite(written)}`;

/** Whether an unknown field is an attempt to give the size of a bra. */
export const isBraField = (field: string): boolean =>
  /^bra(?:$|[^a-z])|^bra-?size$|^(?:cup|band)[\s_-]?size$|^band$|^bh/i.test(field);

/** Why the size of a bra is not read, and what to write in its stead. */
export const braSizeRefused = (written: string): string =>
  `The size of a bra, such as ${written}, is not read: its band is not her under-bust girth. ${table} ${whichToWrite(written)}`;
