import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';

/** Something that is wrong with a chart, at the size or field where it stands. */
export const chartIssue = (code: IssueCode, path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message,
});

/** A value of a chart as a message shows it: short, on one line. */
export function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  const text = String(value).replace(/[\p{Cc}\p{Cs}]+/gu, ' ');
  return text.length > 40 ? `${text.slice(0, 39)}…` : text === '' ? 'an empty text' : text;
}

/** Fields by name, or nothing where something else stands. */
export const fieldsOf = (data: unknown): Readonly<Record<string, unknown>> | undefined =>
  typeof data === 'object' && data !== null && !Array.isArray(data)
    ? (data as Readonly<Record<string, unknown>>)
    : undefined;

/** Whether a field holds anything: an empty cell of a table does not. */
export const isSaid = (value: unknown): boolean =>
  value !== undefined && value !== null && !(typeof value === 'string' && value.trim() === '');
