import type { Issue } from '../engine/issue.ts';
import { plain } from './plain.ts';
import type { Session } from './session.ts';

const heading = { error: 'error', warning: 'look again', note: 'note' } as const;

/** Tells the reader what was found, gravest first, one sentence a line. */
export function sayIssues(session: Session, issues: readonly Issue[]): void {
  for (const severity of ['error', 'warning', 'note'] as const)
    for (const issue of issues)
      if (issue.severity === severity) session.tell(plain(`${heading[severity]}: ${sentence(issue)}\n`));
}

/** The message, with what it is about in front unless it says so itself, and where it stands in the source of a draft. */
export const sentence = ({ path, message, source }: Issue): string => {
  const said = path === '' || message.includes(path) ? message : `${path}: ${message}`;
  return source ? `${source.file}:${source.line}: ${said}` : said;
};

/** How many of each kind, in words. */
export function countIssues(issues: readonly Issue[]): string {
  const counted = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = issues.filter((issue) => issue.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? '' : 's'}`];
  });
  return counted.length === 0 ? 'none' : counted.join(', ');
}
