import { YAMLError } from 'yaml';

/** A slip of the pen in a file of YAML: in which line, counted from one, what is wrong with it, and what was meant. */
export interface Slip {
  readonly line: number;
  readonly text: string;
  readonly wrong: string;
  readonly meant?: string;
}

interface Kind {
  readonly wrong: string;
  readonly slip: RegExp;
  readonly meant?: (line: string, found: RegExpExecArray) => string;
  /** Such a line can be read, as something that nobody means here. */
  readonly readable?: true;
}

const unclosedQuote: Kind = {
  wrong: 'opens a quote that is never closed',
  slip: /:\s+(["'])(?:(?!\1).)*$/,
  meant: (line, found) => `${line}${found[1]}`,
};

const unclosedBracket: Kind = {
  wrong: 'opens a bracket that is never closed',
  slip: /^\s*(?:-\s+)?[A-Za-z][\w -]*:\s+\[[^\]]*$/,
  meant: (line) => `${line}]`,
};

/** The slips that are known, each with what it looks like; a comment at the end of a line is no part of it. */
const kinds: readonly Kind[] = [
  { wrong: 'begins with a tab: begin it with blanks, as many as the lines beside it', slip: /^ *\t/ },
  {
    wrong: 'has no blank after its colon',
    slip: /^(\s*(?:-\s+)?[A-Za-z][\w -]*):(\d.*)$/,
    meant: (_, [, name, value]) => `${name}: ${value}`,
    readable: true,
  },
  {
    wrong: 'has no blank after its colon',
    slip: /^(\s*(?:-\s+)?[A-Za-z][\w -]*):([^\s/].*)$/,
    meant: (_, [, name, value]) => `${name}: ${value}`,
  },
  {
    wrong: 'has no colon after its name',
    slip: /^(\s*(?:-\s+)?[A-Za-z][A-Za-z -]*?)(?:\s*[=;]\s*|\s+)(\d[\d\s.,/-]*)$/,
    meant: (_, [, name, value]) => `${name}: ${value}`,
  },
  {
    wrong: 'has no blank after its dash',
    slip: /^(\s*)-([A-Za-z].*:.*)$/,
    meant: (_, [, gap, value]) => `${gap}- ${value}`,
    readable: true,
  },
  {
    wrong: 'has a comma within a number, where brackets or braces make two entries of it',
    slip: /\{[^}]*:\s*\d+,\d+\s*[,}]|\[\s*\d+,\d+\s*\]/,
    meant: (line) =>
      line.replace(/(:\s*\d+),(\d+\s*[,}])/g, '$1.$2').replace(/\[\s*(\d+),(\d+)\s*\]/g, '$1.$2'),
    readable: true,
  },
  unclosedQuote,
];

/** A longer line (characters) is no measurement, and none is looked at for slips. */
const longest = 200;

const withoutComment = (line: string): string => line.replace(/(?:^|\s)#.*$/, '').trimEnd();

const indentOf = (line: string): number => line.length - line.trimStart().length;

/** How a line ends below which a text of several lines stands, each further right than it. */
const opensText = /:\s+[>|][+-]?$/;

function slipsOf(text: string, known: readonly Kind[]): readonly Slip[] {
  let textBelow: number | undefined;
  return text.split(/\r?\n/).flatMap((whole, i): readonly Slip[] => {
    if (textBelow !== undefined && (whole.trim() === '' || indentOf(whole) > textBelow)) return [];
    textBelow = opensText.test(whole) ? indentOf(whole) : undefined;
    if (whole.length > longest) return [];
    const line = withoutComment(whole);
    for (const { wrong, slip, meant } of known) {
      const found = slip.exec(line);
      const at = { line: i + 1, text: line.trim(), wrong };
      if (found) return [meant ? { ...at, meant: meant(line, found).trim() } : at];
    }
    return [];
  });
}

/** A slip in a text that could be read all the same, but not as it was meant: as fields, or as one long word. */
export const readableSlip = (text: string, data: unknown): Slip | undefined =>
  slipsOf(text, typeof data === 'string' ? kinds : kinds.filter(({ readable }) => readable))[0];

/** The slip behind an error of the reader of YAML: the nearest to where it stopped; without any, that line. */
export function slipBehind(error: unknown, text: string): Slip | undefined {
  if (!(error instanceof YAMLError)) return undefined;
  const stopped = error.linePos?.[0].line ?? 1;
  const lines = text.split(/\r?\n/);
  const at = (line: number): string => withoutComment((lines[line - 1] ?? '').slice(0, longest)).trim();
  if (error.code === 'DUPLICATE_KEY')
    return { line: stopped, text: at(stopped), wrong: 'says again what an earlier line has said; keep one' };
  if (error.code === 'MULTIPLE_DOCS')
    return { line: stopped, text: at(stopped), wrong: 'begins a second document; a file holds one' };
  const unclosed = { quote: [unclosedQuote], Flow: [unclosedBracket] };
  const neverClosed = Object.entries(unclosed).flatMap(([word, known]) =>
    error.message.includes(word) ? slipsOf(text, known) : [],
  );
  const slips = neverClosed.length > 0 ? neverClosed : slipsOf(text, kinds);
  const off = ({ line }: Slip): number => Math.abs(line - stopped);
  const [nearest] = slips.toSorted((a, b) => off(a) - off(b));
  if (nearest) return nearest;
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY') return furtherRight(lines, stopped);
  return undefined;
}

/** A figure with another field behind it on the same line, or a word and a comma with one. */
const twoFields = /^\w+:\s+(?:[\d.,/ -]+\s|[^:,;]+[,;]\s*)\w+:/;

/** A line that begins further right than the one above it, or has a second colon. */
function furtherRight(lines: readonly string[], stopped: number): Slip {
  const [above = '', below = ''] = [lines[stopped - 1], lines[stopped]];
  const text = withoutComment(above.slice(0, longest)).trim();
  if (below.trim() !== '' && indentOf(below) > indentOf(above))
    return {
      line: stopped + 1,
      text: withoutComment(below.slice(0, longest)).trim(),
      wrong: 'begins further right than the line above, as if it were a part of it; begin both alike',
    };
  if (twoFields.test(text))
    return { line: stopped, text, wrong: 'says several things; give each a line of its own' };
  return {
    line: stopped,
    text,
    wrong: 'has a second colon; put what comes after the first into quotes',
    meant: text.replace(/:\s+(.*)$/, ': "$1"'),
  };
}
