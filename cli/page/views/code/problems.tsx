import type { CodeIssue } from './questions.ts';

/** So many are told at once. */
const most = 6;

interface ProblemsProps {
  readonly issues: readonly CodeIssue[];
  /** Whether something is still in sight that could be drawn before. */
  readonly isLast: boolean;
  readonly goTo: (issue: CodeIssue) => void;
}

/** What is wrong with the code as it stands, over the last that could be drawn. */
export const Problems = ({ issues, isLast, goTo }: ProblemsProps) => (
  <div role="status">
    {issues.length > 0 && (
      <div class="hinders">
        {isLast && <p>What is drawn below is the last that could be.</p>}
        {issues.slice(0, most).map((issue) => (
          <p key={`${issue.code} ${issue.path} ${issue.message}`} class="said error">
            <strong>Not so:</strong> {issue.message}{' '}
            {issue.source && (
              <button type="button" onClick={() => goTo(issue)}>
                {issue.source.file}, line {issue.source.line}
              </button>
            )}
          </p>
        ))}
      </div>
    )}
  </div>
);
