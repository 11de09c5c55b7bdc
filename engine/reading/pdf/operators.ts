/** One step of a page's content: its operator, and what was written before it. Text and arrays are left out. */
export interface PdfOperator {
  readonly name: string;
  /** The numbers before it, in order. */
  readonly numbers: readonly number[];
  /** The first name before it, its `#` codes undone. */
  readonly called: string | undefined;
}

/**
 * What a content stream holds: strings, names, brackets, and numbers and operators as words
 * (ISO 32000-1:2008, 7.2 and 7.8.2).
 */
const tokens = /\((?:[^()\\]|\\.)*\)|<<|>>|<[0-9A-Fa-f\s]*>|\/[^\s()<>[\]{}/%]*|[[\]]|[^\s()<>[\]{}/%]+/gs;

/** The steps of a content stream, one after the other. */
export function* operatorsOf(content: string): Generator<PdfOperator> {
  let numbers: number[] = [];
  let called: string | undefined;
  let depth = 0;
  for (const [token] of content.matchAll(tokens)) {
    if (token === '[' || token === '<<') depth++;
    else if (token === ']' || token === '>>') depth--;
    else if (depth > 0 || token.startsWith('(') || token.startsWith('<')) continue;
    else if (token.startsWith('/')) called ??= nameOf(token);
    else if (Number.isFinite(Number(token))) numbers.push(Number(token));
    else {
      yield { name: token, numbers, called };
      numbers = [];
      called = undefined;
    }
  }
}

const decoder = new TextDecoder();

/** A name as it was meant: each `#` with two hexadecimal digits is a byte of its UTF-8. */
const nameOf = (token: string): string =>
  decoder.decode(
    Uint8Array.from(token.slice(1).match(/#[0-9A-Fa-f]{2}|[\s\S]/g) ?? [], (part) =>
      part.length === 3 ? Number.parseInt(part.slice(1), 16) : part.charCodeAt(0),
    ),
  );
