import { readFileSync } from 'node:fs';
import { dirname, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDraftMistake } from '../engine/draft-mistake.ts';
import type { Issue, SourcePlace } from '../engine/issue.ts';
import { reason } from './reason.ts';

/** The source of a draft of one's own: its file, and whatever lies beside it or below. */
export interface DraftSource {
  /**
   * The line where one of these words is written: the one that is written least often, and so tells most; the last of
   * those that are written as often.
   */
  readonly placeOf: (words: readonly string[]) => SourcePlace | undefined;
  /** Something that the draft threw, or that was thrown over it, as an issue with its place. */
  readonly mistake: (error: unknown) => Issue;
}

/** Reads where things stand in the source of a draft; `file` as it was given on the command line, `path` in full. */
export function draftSource(file: string, path: string): DraftSource {
  const named = (where: string): string => (where === path ? file : relative('', where));
  const placeOf = (words: readonly string[]): SourcePlace | undefined => {
    const written = words.map((word) => linesWith(linesOf(path), word)).filter((found) => found.length > 0);
    const rarest = written.toSorted((a, b) => b.length - a.length).at(-1);
    return rarest?.[0] === undefined ? undefined : { file, line: rarest[0] };
  };
  return {
    placeOf,
    mistake: (error) => {
      const words = isDraftMistake(error) ? error.words : [];
      const frame = ownFrame(error, dirname(path));
      const source = frame ? placedIn(frame, words, named) : placeOf(words);
      return {
        code: 'draft-mistake',
        severity: 'error',
        path: words[0] ?? '',
        message: reason(error),
        ...(source ? { source } : {}),
      };
    },
  };
}

interface StackFrame {
  readonly path: string;
  readonly line: number;
}

/** The first place of a stack that lies in the draft's own folder. */
function ownFrame(error: unknown, folder: string): StackFrame | undefined {
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  for (const [, where = '', line = ''] of stack.matchAll(
    /\(?((?:file:\/\/)?\/[^\s()]+|[A-Za-z]:\\[^\s()]+):(\d+):\d+\)?$/gm,
  )) {
    const path = where.startsWith('file:') ? fileURLToPath(where) : where;
    if (path.startsWith(folder + sep) && !path.includes(`${sep}node_modules${sep}`))
      return { path, line: Number(line) };
  }
  return undefined;
}

/** A call may go on over many lines: so the place is where the word is written that it is about, from there on. */
function placedIn(
  { path, line }: StackFrame,
  words: readonly string[],
  named: (path: string) => string,
): SourcePlace {
  const lines = linesOf(path);
  const all = words.map((word) => linesWith(lines, word));
  const later = all.flatMap((found) => found.find((at) => at >= line) ?? []);
  const place = later[0] ?? all.flat()[0] ?? line;
  return { file: named(path), line: place };
}

function linesOf(path: string): readonly string[] {
  try {
    return readFileSync(path, 'utf8').split('\n');
  } catch {
    return [];
  }
}

/** The lines, from 1, on which a word stands in quotes, or as the name of a field. */
function linesWith(lines: readonly string[], word: string): readonly number[] {
  if (word === '') return [];
  const bare = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const written = new RegExp(`['"\`]${bare}['"\`]|(?:^|\\{)\\s*${bare}\\s*:`);
  return lines.flatMap((text, i) => (written.test(text) ? [i + 1] : []));
}
