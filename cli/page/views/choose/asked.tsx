import { type Choice, capital } from '../../../../drafts/index.ts';
import type { PageIssue } from '../../page-issue.ts';
import { spoken } from '../../page-words.ts';
import { Said } from '../said.tsx';
import { sameIn } from '../unless-same.ts';
import type { FileViewProps } from '../view.ts';
import type { Pictures } from './own.ts';

/** One choice as it is asked for. */
export interface Asked<Kind extends Choice = Choice> extends Pick<FileViewProps, 'send'> {
  readonly choice: Kind;
  /** What was chosen or typed; nothing where it is left to the draft. */
  readonly text: string | undefined;
  readonly inches: boolean;
  readonly pictures: Pictures[string] | undefined;
  readonly issues: readonly PageIssue[];
}

/** Whether nothing of a choice is to be drawn anew. */
export const sameAsked = (before: Asked, now: Asked): boolean =>
  sameIn<Asked>(['choice', 'text', 'inches', 'pictures'])(before, now) &&
  before.issues.length === now.issues.length &&
  before.issues.every(({ message }, i) => message === now.issues[i]?.message);

/** What was found of a choice, and the way back to what is usual. */
export function Below({ choice: { name, help }, text, issues, send }: Asked) {
  return (
    <div id={`${name}-said`}>
      <p class="quiet">{capital(help)}.</p>
      {issues.map((issue) => (
        <Said key={`${issue.code} ${issue.message}`} issue={issue} />
      ))}
      {text !== undefined && (
        <button type="button" class="back" onClick={() => send({ does: 'choose', name, text: undefined })}>
          As usual again<span class="unseen">: {spoken(name)}</span>
        </button>
      )}
    </div>
  );
}
