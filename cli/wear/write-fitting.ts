import { stat } from 'node:fs/promises';
import { basename, dirname, extname } from 'node:path';
import { parseDocument } from 'yaml';
import type { FittingChange } from '../../engine/body/fitting.ts';
import type { Unit } from '../../engine/text/units.ts';
import { writeFiles } from '../files/write-files.ts';
import { unusable } from '../input/unusable.ts';
import { json } from '../output/walk-result.ts';
import { fittingEntries } from './fitting-entries.ts';

/** Throws `Unusable` where measurements cannot be written again as `to`: it is a file that is read, or what is read is none. */
export async function refuseOverInput(to: string, read: readonly string[]): Promise<void> {
  if (read.includes('-'))
    throw unusable(
      'fitting-over-input',
      '--write-fitting',
      'Measurements from standard input cannot be written again. Name the file that holds them.',
    );
  for (const file of read)
    if (await isSame(to, file))
      throw unusable(
        'fitting-over-input',
        '--write-fitting',
        `${to} holds the measurements that are read. Name another file: they stay as they are.`,
      );
}

const isSame = async (one: string, other: string): Promise<boolean> => {
  const [a, b] = await Promise.all([one, other].map((file) => stat(file).catch(() => undefined)));
  return a !== undefined && a.ino === b?.ino && a.dev === b.dev;
};

/**
 * Writes measurements again with another fitting, as JSON or as YAML by the name of the file: what else stands in them,
 * remarks of YAML too, is kept.
 */
export async function writeFitting(
  to: string,
  text: string,
  fitting: readonly FittingChange[],
  unit: Unit,
): Promise<void> {
  const entries = fittingEntries(fitting, unit);
  const document = parseDocument(text, { logLevel: 'error' });
  document.set('fitting', document.createNode(entries));
  const asJson = extname(to).toLowerCase() === '.json';
  const written = asJson ? json(document.toJS()) : document.toString({ lineWidth: 0 });
  await writeFiles(dirname(to), new Map([[basename(to), written]]));
}
