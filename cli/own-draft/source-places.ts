import { isDraftMistake } from '../../engine/draft-mistake.ts';
import type { Issue, SourcePlace } from '../../engine/issue.ts';
import { thrownWords } from './thrown-words.ts';

/** Where things stand in the source of a draft. */
export interface DraftSource {
  /**
   * The line where one of these words is written: the one that is written least often, and so tells most; the last of
   * those that are written as often.
   */
  readonly placeOf: (words: readonly string[]) => SourcePlace | undefined;
  /** Where what the module exports is written, or one of its fields by these words. */
  readonly exported: (words: readonly string[]) => SourcePlace | undefined;
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
    const rarest = (found: (lines: readonly string[], word: string) => readonly number[]) =>
      words
        .map((word) =>
          names.flatMap((file) => found(linesOf(file), word).map((line): SourcePlace => ({ file, line }))),
        )
        .filter((places) => places.length > 0)
        .toSorted((a, b) => b.length - a.length)
        .at(-1)?.[0];
    return rarest(linesWith) ?? rarest(linesThatMake);
  };
  return {
    placeOf,
    exported: (words) =>
      names.flatMap((file) => {
        const lines = linesOf(file);
        const line = exportedAt(lines);
        return line === undefined ? [] : [placedIn({ file, line }, words, lines)];
      })[0],
    mistake: (error) => {
      const words = isDraftMistake(error) ? error.words : typeof error === 'string' ? [error] : [];
      const frame = frameOf(error);
      const source = frame ? placedIn(frame, words, linesOf(frame.file)) : placeOf(words);
      return {
        code: 'draft-mistake',
        severity: 'error',
        path: words[0] ?? '',
        message: thrownWords(error, reason(error)),
        ...(source ? { source } : {}),
      };
    },
  };
}

/** The line, from 1, on which a module's default export is written: where it is made, if it is exported by name. */
function exportedAt(lines: readonly string[]): number | undefined {
  const at = (pattern: RegExp): number | undefined => {
    const found = lines.findIndex((text) => pattern.test(text));
    return found < 0 ? undefined : found + 1;
  };
  const exporting = at(/^\s*export\s+default\b|^\s*export\s*\{.*\bas\s+default\b|^\s*module\.exports\s*=/);
  if (exporting === undefined) return undefined;
  const [, name, renamed] =
    /(?:default|=)\s+([\w$]+)\s*;?\s*$|([\w$]+)\s+as\s+default/.exec(lines[exporting - 1] ?? '') ?? [];
  const made = name ?? renamed;
  const declared =
    made && new RegExp(`^\\s*(?:export\\s+)?(?:const|let|var)\\s+${made.replaceAll('$', '\\$')}\\b`);
  return (declared ? at(declared) : undefined) ?? exporting;
}

/** A call may go on over many lines: so the place is where the word is written that it is about, from there on. */
function placedIn(
  { file, line }: SourcePlace,
  words: readonly string[],
  lines: readonly string[],
): SourcePlace {
  const all = words.map((word) => linesWith(lines, word));
  const later = all.flatMap((found) => found.find((at) => at >= line) ?? []);
  const made = words.flatMap((word) => linesThatMake(lines, word));
  return { file, line: later[0] ?? all.flat()[0] ?? made[0] ?? line };
}

/** The lines, from 1, on which a word stands in quotes, as the title of a sentence, or as the name of a field. */
function linesWith(lines: readonly string[], word: string): readonly number[] {
  if (word === '') return [];
  const bare = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const written = new RegExp(`['"\`]${bare}['"\`]|\`${bare}:|(?:^|\\{)\\s*${bare}\\s*:`);
  return lines.flatMap((text, i) => (written.test(text) ? [i + 1] : []));
}

/** The lines, from 1, on which a template stands that a word may have been put together by. */
function linesThatMake(lines: readonly string[], word: string): readonly number[] {
  return lines.flatMap((text, i) => {
    const templates = [...text.matchAll(/`([^`]*)`/g)].map(([, inside = '']) => inside.split(/\$\{[^}]*\}/));
    return templates.some((fixed) => makes(fixed, word)) ? [i + 1] : [];
  });
}

/** Fewer letters than these of a template's own are in too many words. */
const TELLING = 4;

/** Whether a word begins, goes on and ends as the fixed parts of a template do. */
function makes(fixed: readonly string[], word: string): boolean {
  if (fixed.length < 2 || fixed.join('').replaceAll(/[^\p{L}]/gu, '').length < TELLING) return false;
  let at = 0;
  for (const part of fixed) {
    at = word.indexOf(part, at);
    if (at < 0) return false;
    at += part.length;
  }
  return word.startsWith(fixed[0] ?? '') && word.endsWith(fixed.at(-1) ?? '');
}
