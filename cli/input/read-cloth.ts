import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import { readCloth } from '../../engine/cloth/cloth-file.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { nearestWord } from '../../engine/text/nearest-word.ts';
import { readDataFile } from './read-data.ts';
import { Unusable, unusable } from './unusable.ts';

/** What a garment is made of where nothing else is said. */
export const usualCloth = 'cotton';

/** The cloth that a word names: one of those that ship, or a file of a cloth's figures. */
export async function clothCalled(word: string): Promise<WovenCloth> {
  const shipped = cloths.find(({ name }) => name === word);
  if (shipped) return shipped;
  const names = cloths.map(({ name }) => name);
  // Whoever writes a file's name writes its ending, or a folder.
  if (word !== '-' && !/[./\\]/.test(word)) {
    const near = nearestWord(word, names);
    throw unusable(
      'unknown-cloth',
      '--cloth',
      `There is no cloth called “${word.slice(0, 40)}”. ${near ? `Did you mean “${near}”?` : `Known are: ${names.join(', ')}; or name a file of its figures.`}`,
    );
  }
  const read = readCloth(await readDataFile(word));
  if (!read.ok) throw new Unusable(read.issues);
  return read.value;
}
