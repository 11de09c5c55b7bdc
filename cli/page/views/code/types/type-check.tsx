import type { CodeIssue } from '../questions.ts';
import type { TypeProblem } from './messages.ts';
import type { Typing } from './types.ts';

/** So many are told at once. */
const most = 6;

interface TypeCheckProps {
  readonly wanted: boolean;
  readonly want: (wanted: boolean) => void;
  readonly typing: Typing | undefined;
  readonly goTo: (issue: CodeIssue) => void;
}

/** Whether types are checked, and what they do not allow, in whichever file. */
export const TypeCheck = ({ wanted, want, typing, goTo }: TypeCheckProps) => (
  <section aria-label="Types">
    <p class="row">
      <label>
        <input
          type="checkbox"
          checked={wanted}
          onChange={({ currentTarget }) => want(currentTarget.checked)}
        />{' '}
        Check types as one writes
      </label>{' '}
      <span class="quiet" role="status">
        {standing(typing)}
      </span>
    </p>
    {typing?.problems.slice(0, most).map((problem) => (
      <p key={`${problem.file} ${problem.from} ${problem.message}`} class="said warning">
        {problem.message}{' '}
        <button type="button" onClick={() => goTo(typeIssue(problem))}>
          {problem.file}, line {problem.line}
        </button>
      </p>
    ))}
  </section>
);

function standing(typing: Typing | undefined): string {
  if (!typing) return 'TypeScript’s own compiler does it, which is loaded for it: 1.4 MB, once.';
  if (typing.is === 'loading') return 'The compiler is being loaded …';
  if (typing.is === 'failed')
    return 'The compiler could not be loaded. Without it names are looked at all the same.';
  const { problems, whole } = typing;
  if (!whole) return 'Looking at the other files …';
  if (problems.length === 0) return 'Every type fits.';
  return `${problems.length === 1 ? 'One place' : `${problems.length} places`} where a type does not fit.`;
}

const typeIssue = ({ file, line, message }: TypeProblem): CodeIssue => ({
  code: 'type',
  severity: 'warning',
  path: '',
  message,
  source: { file, line },
});
