import type { Issue } from '../../engine/issue.ts';
import type { Unit } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import type { Session } from '../session.ts';
import { tell } from './say.ts';

const heading = { error: 'error', warning: 'look again', note: 'note' } as const;

/** Tells the reader what was found, gravest first, each sentence on a line of its own, with lengths in her unit. */
export function sayIssues(session: Session, issues: readonly Issue[], units: Unit): void {
  for (const severity of ['error', 'warning', 'note'] as const)
    for (const issue of issues)
      if (issue.severity === severity)
        tell(session, `${heading[severity]}: ${withLengthsIn(sentence(issue), units)}\n`, 2);
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
