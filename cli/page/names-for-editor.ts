import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { type ProgramNames, programNames } from './views/code/names/program-names.ts';
import { readCode } from './views/code/names/read-code.ts';

/**
 * What the editor knows of the program's names: the public surface, what the drafts take from the engine besides, and the types
 * that they speak of. Run when the page is built; `root` is the folder of the sources.
 */
export function namesForEditor(root: string): ProgramNames {
  const read = (file: string): string => readFileSync(join(root, file), 'utf8');
  const from = (file: string, source: string): string => posix.join(posix.dirname(file), source);
  const names: Record<string, ProgramNames[string]> = {};
  const drafts = readdirSync(join(root, 'drafts'), { recursive: true, encoding: 'utf8' });
  for (const file of drafts.filter((name) => name.endsWith('.ts')).sort()) {
    const path = `drafts/${file.replaceAll('\\', '/')}`;
    for (const { name, isType, source } of readCode(read(path)).imports) {
      if (!isType || !source.includes('/engine/') || name in names) continue;
      const found = programNames(from(path, source), read, from)[name];
      if (found) names[name] = found;
    }
  }
  for (const file of ['drafts/engine-parts.ts', 'drafts/index.ts'])
    Object.assign(names, programNames(file, read, from));
  return names;
}
