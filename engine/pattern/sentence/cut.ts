import type { SentenceParts } from './tokens.ts';

/** A sentence cut at its marks: "Title: formula; words behind it [source]". */
export interface CutSentence {
  readonly title: SentenceParts;
  readonly body: SentenceParts;
  /** Where the body begins, each value put in taken as one character. */
  readonly bodyAt: number;
  /** What is said behind the formula. */
  readonly behind: SentenceParts;
  /** Whose word it is, where no rule says so. */
  readonly cited: string | undefined;
}

/** Cuts a template of `strings` with a value between each two. */
export function cutSentence(
  strings: readonly string[],
  refuse: (at: number, why: string) => never,
): CutSentence {
  const parts = strings.flatMap((text, i): SentenceParts => (i === 0 ? [text] : [i - 1, text]));
  const [title, afterTitle] = splitAt(parts, ':');
  if (!afterTitle) return refuse(0, 'A sentence begins with its title and a ":"');
  const [words, cited] = splitSource(afterTitle);
  const [body, behind] = splitAt(words, ';');
  return {
    title: trimmed(title),
    body: trimmed(body),
    bodyAt: lengthOf(title) + 1 + blanksBefore(body),
    behind: trimmed(behind ?? []),
    cited,
  };
}

/** The stretch before the first `mark`, and that behind it where there is one. */
function splitAt(parts: SentenceParts, mark: string): readonly [SentenceParts, SentenceParts | undefined] {
  const place = parts.findIndex((part) => typeof part === 'string' && part.includes(mark));
  const text = parts[place];
  if (typeof text !== 'string') return [parts, undefined];
  const at = text.indexOf(mark);
  return [
    [...parts.slice(0, place), text.slice(0, at)],
    [text.slice(at + 1), ...parts.slice(place + 1)],
  ];
}

/** A source in square brackets at the very end, and what stands before it. */
function splitSource(parts: SentenceParts): readonly [SentenceParts, string | undefined] {
  const last = parts.at(-1);
  const found = typeof last === 'string' ? /^([^[]*)\[([^\]]+)\]\s*$/.exec(last) : null;
  return found ? [[...parts.slice(0, -1), found[1] ?? ''], found[2]] : [parts, undefined];
}

const lengthOf = (parts: SentenceParts): number =>
  parts.reduce<number>((sum, part) => sum + (typeof part === 'string' ? part.length : 1), 0);

const blanksBefore = ([first]: SentenceParts): number =>
  typeof first === 'string' ? first.length - first.trimStart().length : 0;

/** Without blanks at both ends, or empty stretches. */
function trimmed(parts: SentenceParts): SentenceParts {
  const last = parts.length - 1;
  return parts
    .map((part, i) => {
      if (typeof part === 'number') return part;
      const text = i === 0 ? part.trimStart() : part;
      return i === last ? text.trimEnd() : text;
    })
    .filter((part) => part !== '');
}
