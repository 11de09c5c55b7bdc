import { isDraftMistake } from '../../engine/draft-mistake.ts';
import type { Issue, SourcePlace } from '../../engine/issue.ts';

/** Where things stand in the source of a draft. */
export interface DraftSource {
  /**
   * The line where one of these words is written: the one that is written least often, and so tells most; the last of
   * those that are written as often.
   */
  readonly placeOf: (words: readonly string[]) => SourcePlace | undefined;
  /** Something that the draft threw, or that was thrown over it, as an issue with its place. */
  readonly mistake: (error: unknown) => Issue;
}

/** The files of a draft, wherever they are. */
export interface SourceFiles {
  /** Those that are searched for a word, by their names. */
  readonly names: readonly string[];
  readonly linesOf: (file: string) => readonly string[];
  /** The first place of a stack that lies in the draft's own files. */
  readonly frameOf: (error: unknown) => SourcePlace | undefined;
  /** What an error says of itself. */
  readonly reason: (error: unknown) => string;
}

/** Finds places in the source of a draft. */
export function sourcePlaces({ names, linesOf, frameOf, reason }: SourceFiles): DraftSource {
  const placeOf = (words: readonly string[]): SourcePlace | undefined => {
    const written = words
      .map((word) =>
        names.flatMap((file) => linesWith(linesOf(file), word).map((line): SourcePlace => ({ file, line }))),
      )
      .filter((found) => found.length > 0);
    return written.toSorted((a, b) => b.length - a.length).at(-1)?.[0];
  };
  return {
    placeOf,
    mistake: (error) => {
      const words = isDraftMistake(error) ? error.words : [];
      const frame = frameOf(error);
      const source = frame ? placedIn(frame, words, linesOf(frame.file)) : placeOf(words);
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

/** A call may go on over many lines: so the place is where the word is written that it is about, from there on. */
function placedIn(
  { file, line }: SourcePlace,
  words: readonly string[],
  lines: readonly string[],
): SourcePlace {
  const all = words.map((word) => linesWith(lines, word));
  const later = all.flatMap((found) => found.find((at) => at >= line) ?? []);
  return { file, line: later[0] ?? all.flat()[0] ?? line };
}

/** The lines, from 1, on which a word stands in quotes, or as the name of a field. */
function linesWith(lines: readonly string[], word: string): readonly number[] {
  if (word === '') return [];
  const bare = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const written = new RegExp(`['"\`]${bare}['"\`]|(?:^|\\{)\\s*${bare}\\s*:`);
  return lines.flatMap((text, i) => (written.test(text) ? [i + 1] : []));
}
