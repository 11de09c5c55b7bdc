import { importedBy } from '../../../../own-draft/draft-files.ts';
import type { KnownNames } from './known-names.ts';
import { readCode } from './read-code.ts';

/**
 * Reads the files that the shown one takes something from, with a pause after each, so that looking at names afterwards keeps
 * nobody waiting: what has been read is known again. Ends early where `wanted` says that it is no longer of use.
 */
export async function readAhead({ file, files }: KnownNames, wanted: () => boolean): Promise<void> {
  const names = new Set(Object.keys(files));
  const read = new Set<string>();
  const waiting = [file];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (read.has(next)) continue;
    read.add(next);
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (!wanted()) return;
    const { imports, passed } = readCode(files[next] ?? '');
    for (const { source } of next === file ? [...imports, ...passed] : passed) {
      const from = importedBy(next, source, names);
      if (typeof from === 'object') waiting.push(from.file);
    }
  }
}
