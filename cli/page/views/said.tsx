import type { PageIssue } from '../page-issue.ts';

const heading = { error: 'Not so', warning: 'Look again', note: 'Note' } as const;

/** One thing that was found, with a word for how grave it is, so that no colour is needed to know. */
export const Said = ({ issue: { severity, message }, about }: { issue: PageIssue; about?: string }) => (
  <p class={`said ${severity}`}>
    <strong>{heading[severity]}:</strong> {about ? `${about}: ` : ''}
    {message}
  </p>
);

/** Several, each in a paragraph of its own; what they are about stands before those that do not say it. */
export const AllSaid = ({ issues }: { issues: readonly PageIssue[] }) => (
  <>
    {issues.map((issue) => (
      <Said
        key={`${issue.code} ${issue.path} ${issue.message}`}
        issue={issue}
        {...(issue.path === '' || issue.message.includes(issue.path) ? {} : { about: issue.path })}
      />
    ))}
  </>
);
