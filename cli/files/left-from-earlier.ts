import { readdir } from 'node:fs/promises';
import { cuttingFileNames } from './cutting-files.ts';

/** Whether a file of this name is one that a command writes into its folder. */
type Writes = (name: string) => boolean;

/** Pieces and cutting files of `draft`. */
export const ofDraft: Writes = (name) =>
  /^\d+-.+\.svg$/.test(name) || cuttingFileNames('cutting').includes(name);

/** Nests, tables and cutting files of `grade`. */
export const ofGrade: Writes = (name) =>
  /^(nest.*\.(svg|pdf)|grade.*\.csv)$/.test(name) || cuttingFileNames('grade').includes(name);

/** Cutting files of `print`, beside a PDF of this name without its end. */
export const ofPrint =
  (pdf: string): Writes =>
  (name) =>
    cuttingFileNames(pdf).includes(name);

/**
 * Says which files of an earlier run still lie in a folder beside those just written: they are not of this garment. Nothing where
 * there are none.
 */
export async function leftFromEarlier(
  folder: string,
  writes: Writes,
  written: Iterable<string>,
): Promise<readonly string[]> {
  const ours = new Set(written);
  const left = (await readdir(folder)).filter((name) => writes(name) && !ours.has(name)).sort();
  return left.length > 0 ? [`note: not of this draft, left from an earlier one: ${left.join(', ')}\n`] : [];
}
