import { lengthIn, type Unit } from '../../../../drafts/index.ts';
import type { Held, HeldCase } from './coding.ts';
import type { CodeIssue } from './questions.ts';

/** The slightest and the fullest bust of the grid, mm (`trialCases`). */
const [least, most] = [750, 1500];

interface HoldProps {
  readonly units: Unit;
  readonly held: Held | undefined;
  /** Whether there is code that can be held. */
  readonly ready: boolean;
  readonly hold: (ends: boolean) => void;
  readonly stop: () => void;
  readonly goTo: (issue: CodeIssue) => void;
}

const outcomes = {
  true: 'true',
  refused: 'refused',
  'not true': 'not true',
  thrown: 'broke',
} as const;

/** The changed draft held to everybody: whom it fails, and where. */
export function Hold({ held, units, ready, hold, stop, goTo }: HoldProps) {
  const done = held?.cases.filter(({ came }) => came).length ?? 0;
  const failing = held?.cases.filter(({ came }) => came && came.outcome !== 'true') ?? [];
  return (
    <section aria-label="Hold it to everybody" class="hold">
      <h2>Hold it to everybody</h2>
      <p>
        The draft as it stands is drawn for the invented bodies and a grid of others, from a bust of{' '}
        {lengthIn(least, units)} to one of {lengthIn(most, units)}, and checked.
      </p>
      <p class="row">
        <button type="button" disabled={!ready} onClick={() => hold(false)}>
          Hold it to everybody
        </button>
        <button type="button" disabled={!ready} onClick={() => hold(true)}>
          And to both ends of every choice
        </button>
        {held && done < held.cases.length && (
          <button type="button" onClick={stop}>
            Stop
          </button>
        )}
      </p>
      {held && (
        <>
          <p role="status" class="lead">
            {standing(held.cases.length, done, failing.length)}
          </p>
          <Bodies cases={held.cases.filter(({ choices }) => choices === '')} />
          {failing.length > 0 && <h3>Whom it fails</h3>}
          <ul class="failing">
            {groupedByIssue(failing).map(({ issue, names, outcome }) => (
              <li key={`${outcome} ${issue?.code} ${names[0]}`}>
                <p>
                  <strong>
                    {names.length === 1 ? names[0] : `${names.length} of them, such as ${names[0]}`}
                  </strong>{' '}
                  ({outcomes[outcome]}): {issue?.message ?? 'nothing was said'}{' '}
                  {issue?.source && (
                    <button type="button" onClick={() => goTo(issue)}>
                      {issue.source.file}, line {issue.source.line}
                    </button>
                  )}
                </p>
                {names.length > 1 && (
                  <details>
                    <summary>All {names.length}</summary>
                    <p>{names.join('; ')}</p>
                  </details>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function standing(all: number, done: number, failing: number): string {
  const so = done < all ? `${done} of ${all} drawn` : `All ${all} drawn`;
  if (failing === 0) return `${so}, every one true${done < all ? ' so far' : ''}.`;
  return `${so}; ${failing} of them ${failing === 1 ? 'fails' : 'fail'}.`;
}

/** A mark for each body, in the order in which they were drawn; its sign and its words tell what came. */
const Bodies = ({ cases }: { cases: readonly HeldCase[] }) => (
  <ul class="everybody" aria-label="Bodies">
    {cases.map(({ name, came }) => (
      <li key={name} class={came === undefined ? 'waiting' : came.outcome === 'true' ? 'well' : 'ill'}>
        <span aria-hidden="true">{came === undefined ? '·' : came.outcome === 'true' ? '✓' : '✕'}</span>{' '}
        {name}
        <span class="unseen">: {came === undefined ? 'to come' : outcomes[came.outcome]}</span>
      </li>
    ))}
  </ul>
);

interface FailingGroup {
  readonly outcome: keyof typeof outcomes;
  readonly issue: CodeIssue | undefined;
  readonly names: readonly string[];
}

/** Those that fail alike are told together: by what is said first of each. */
function groupedByIssue(failing: readonly HeldCase[]): readonly FailingGroup[] {
  const groups = new Map<
    string,
    { outcome: keyof typeof outcomes; issue: CodeIssue | undefined; names: string[] }
  >();
  for (const { name, choices, came } of failing) {
    if (!came) continue;
    const [issue] = came.issues;
    const key = `${came.outcome} ${issue?.code} ${issue?.path}`;
    const called = choices === '' ? name : `${name} with ${choices}`;
    const group = groups.get(key);
    if (group) group.names.push(called);
    else groups.set(key, { outcome: came.outcome, issue, names: [called] });
  }
  return [...groups.values()].toSorted((a, b) => b.names.length - a.names.length);
}
