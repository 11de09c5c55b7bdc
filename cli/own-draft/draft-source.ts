import { readFileSync } from 'node:fs';
import { dirname, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SourcePlace } from '../../engine/issue.ts';
import { inPackage } from '../beside.ts';
import { reason } from '../input/reason.ts';
import { type DraftSource, sourcePlaces } from './source-places.ts';

/** Reads where things stand in the source of a draft; `file` as it was given on the command line, `path` in full. */
export function draftSource(file: string, path: string): DraftSource {
  const named = (where: string): string => (where === path ? file : relative('', where));
  return sourcePlaces({
    names: [file],
    linesOf: (name) => linesOf(name === file ? path : resolve(name)),
    frameOf: (error) => ownFrame(error, path, named),
    reason,
  });
}

/** Where the program's own code lies. */
const program = ['engine/', 'drafts/', 'cli/', '.dist/'].map((folder) => fileURLToPath(inPackage(folder)));

/** The first place of a stack that lies in the draft's own folder; the program may lie there too, and is not meant. */
function ownFrame(error: unknown, whole: string, named: (path: string) => string): SourcePlace | undefined {
  const folder = dirname(whole);
  const others = program.filter((own) => !(folder + sep).startsWith(own));
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  for (const [, where = '', line = ''] of stack.matchAll(
    /\(?((?:file:\/\/)?\/[^\s()]+|joined:[^\s()]+|[A-Za-z]:\\[^\s()]+):(\d+):\d+\)?$/gm,
  )) {
    // Of a draft of several files in one: its lines are those of the whole.
    if (/(?:^|\/)joined:/.test(where)) return { file: named(whole), line: Number(line) };
    const path = where.startsWith('file:') ? fileURLToPath(where) : where;
    const isOthers = path.includes(`${sep}node_modules${sep}`) || others.some((own) => path.startsWith(own));
    if (path.startsWith(folder + sep) && !isOthers) return { file: named(path), line: Number(line) };
  }
  return undefined;
}

function linesOf(path: string): readonly string[] {
  try {
    return readFileSync(path, 'utf8').split('\n');
  } catch {
    return [];
  }
}
