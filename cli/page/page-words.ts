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
