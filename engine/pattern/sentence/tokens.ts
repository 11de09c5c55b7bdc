/** A piece of a formula as it stands in the sentence. `at`: its place, each value put in taken as one character. */
export type Token =
  | { readonly kind: 'number'; readonly value: number; readonly degrees: boolean; readonly at: number }
  | { readonly kind: 'given'; readonly given: number; readonly at: number }
  | { readonly kind: 'word'; readonly word: string; readonly at: number }
  | { readonly kind: 'sign'; readonly sign: Sign; readonly at: number }
  | { readonly kind: 'end'; readonly at: number };

export type Sign = '+' | '-' | '/' | '(' | ')' | ',';

/** A stretch of a sentence: its words, and the values put in by their places. */
export type SentenceParts = readonly (string | number)[];

const token = /\s+|(\d+(?:\.\d+)?)(°?)|([\p{L}][\p{L}\p{N}]*(?:['’-][\p{L}\p{N}]+)*)|([-+/(),])/uy;

/** What to write for a sign that other notations have. */
const instead = (sign: string): string =>
  '*×·'.includes(sign)
    ? ': times is written x or "of"'
    : '÷:'.includes(sign)
      ? ': divided by is written /'
      : '';

/**
 * Reads a stretch of a sentence as tokens, its first character at `from`. `isWord` says which values put in are
 * words. A character that is none of these is given to `refuse`, with its place.
 */
export function tokensOf(
  parts: SentenceParts,
  from: number,
  isWord: (given: number) => boolean,
  refuse: (at: number, why: string) => never,
): readonly Token[] {
  const tokens: Token[] = [];
  let start = from;
  for (const part of parts) {
    if (typeof part === 'number') {
      tokens.push(
        isWord(part) ? { kind: 'word', word: '', at: start } : { kind: 'given', given: part, at: start },
      );
      start += 1;
      continue;
    }
    token.lastIndex = 0;
    while (token.lastIndex < part.length) {
      const at = start + token.lastIndex;
      const found = token.exec(part);
      if (!found)
        return refuse(at, `This character has no meaning in a formula${instead(part.charAt(at - start))}`);
      const [, digits, degrees, word, sign] = found;
      if (digits) tokens.push({ kind: 'number', value: Number(digits), degrees: degrees === '°', at });
      else if (word) tokens.push({ kind: 'word', word, at });
      else if (sign) tokens.push({ kind: 'sign', sign: sign as Sign, at });
    }
    start += part.length;
  }
  return [...tokens, { kind: 'end', at: start }];
}
