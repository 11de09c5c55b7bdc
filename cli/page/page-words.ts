import { measurementNames, measurementWords } from '../../drafts/index.ts';

/** What stands beside a field for her who has taken a measurement twice. */
export const letItStand = 'Taken twice: let it stand';

/** A name of a file as it is spoken: that of a measurement by its term, and `necklineDepth` as neckline depth. */
export function spoken(name: string): string {
  const measured = measurementNames.find((known) => known === name);
  if (measured) return measurementWords(measured);
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.replace(/^(under|upper) (bust|arm)/, '$1-$2');
}

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
        .replace(/“?\b[a-z]+(?:[A-Z][a-z]+)+\b”?/g, (name) => spoken(name.replace(/[“”]/g, '')));
