import type { Issue } from '../../engine/issue.ts';
import type { IssueCode } from '../../engine/issue-codes/issue-codes.ts';
import { withoutMark } from './data-in.ts';

/** A line longer than this (bytes) holds no set of measurements. */
export const longestLine = 100_000;

/** What bytes that are no text in UTF-8 are read as; whoever wrote it itself had read a text wrong before. */
const NO_TEXT = '\uFFFD';

/** What stands before bytes that are no text: enough to find them by. */
const before = (text: string): string => {
  const end = text.indexOf(NO_TEXT);
  return text.slice(Math.max(0, end - 30), end).replaceAll(/\p{C}/gu, ' ');
};

/** What a line of JSON says, or why it cannot be read: it is too long (no text), no text in UTF-8, no JSON, or says one thing twice. */
export function readJsonLine(
  number: number,
  text: string | undefined,
): { readonly data: unknown; readonly issue?: undefined } | { readonly issue: Issue } {
  const refuse = (code: IssueCode, message: string) => ({
    issue: { code, severity: 'error', path: `line ${number}`, message } as const,
  });
  if (text === undefined)
    return refuse('line-too-long', `Line ${number} is longer than any set of measurements.`);
  if (text.includes(NO_TEXT))
    return refuse(
      'line-not-text',
      `Line ${number} is not all text in UTF-8, at “${before(text)}”. Save the file with that encoding.`,
    );
  let data: unknown;
  try {
    data = JSON.parse(withoutMark(text));
  } catch {
    return refuse('not-json', `Line ${number} is not JSON.`);
  }
  if (keysWritten(text) > keysIn(data))
    return refuse(
      'said-twice',
      `Line ${number} says something twice: each measurement may stand in it once.`,
    );
  return { data };
}

/** The keys of objects as they are written: texts with a colon behind them. */
const keysWritten = (text: string): number =>
  [...text.matchAll(/"(?:[^"\\]|\\.)*"(\s*:)?/g)].filter(([, colon]) => colon !== undefined).length;

/** The keys of objects that are left when a text was read: of two alike only the last. However deep, no call is within another. */
function keysIn(data: unknown): number {
  let count = 0;
  const waiting = [data];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    if (!Array.isArray(next)) count += Object.keys(next).length;
    for (const value of Object.values(next)) waiting.push(value);
  }
  return count;
}
