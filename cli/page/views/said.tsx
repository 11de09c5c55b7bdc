import { capital, type MeasurementName, measurementNames } from '../../../drafts/index.ts';
import type { PageIssue } from '../page-issue.ts';
import { letItStand, spoken } from '../page-words.ts';
import { goTo } from './go-to.ts';
import type { ViewProps } from './view.ts';

const heading = { error: 'Not so', warning: 'Look again', note: 'Note' } as const;

/** One thing that was found, with a word for how grave it is, so that no colour is needed to know. */
export const Said = ({ issue: { severity, message }, about }: { issue: PageIssue; about?: string }) => (
  <p class={`said ${severity}`}>
    <strong>{heading[severity]}:</strong> {about ? `${about}: ` : ''}
    {message}
  </p>
);

/** What `sure` can answer: that a number is unlikely, not that it cannot be read. */
export const canBeSure = ({ severity, code }: PageIssue): boolean =>
  severity !== 'note' &&
  !['not-a-number', 'measurement-missing', 'measurement-out-of-range', 'unknown-field'].includes(code);

const measured = (path: string): MeasurementName | undefined =>
  measurementNames.find((name) => name === path);

/** What an issue is about, where it does not say it itself: a field or a choice by its name on the page. */
function aboutOf({ path, message }: PageIssue): { readonly about?: string } {
  const about = spoken(path);
  return path === '' || message.toLowerCase().includes(about.toLowerCase()) ? {} : { about: capital(about) };
}

interface AllSaidProps {
  readonly issues: readonly PageIssue[];
  /** Where they are of what she typed and chose: each then leads to its field, or lets what was measured twice stand. */
  readonly hers?: ViewProps;
}

/** Several, each in a paragraph of its own. */
export const AllSaid = ({ issues, hers }: AllSaidProps) => (
  <>
    {issues.map((issue) => (
      <div key={`${issue.code} ${issue.path} ${issue.message}`} class="found-of">
        <Said issue={issue} {...aboutOf(issue)} />
        {hers && <WayOut issue={issue} {...hers} />}
      </div>
    ))}
  </>
);

/** What can be pressed about something that was found: to the field or the choice, or to let a measurement stand. */
function WayOut({ issue, state, send }: ViewProps & { issue: PageIssue }) {
  const { path } = issue;
  const measurement = measured(path);
  const chosen = state.garments.some(
    ({ name, choices }) => name === state.garment && choices.some((each) => each.name === path),
  );
  if (!measurement && !chosen) return null;
  const view = measurement ? 'measure' : 'choose';
  const typed = measurement && state.form.sizes[measurement] !== undefined;
  return (
    <p class="row">
      {state.view !== view && (
        <button type="button" onClick={() => goTo(view, path)}>
          To the {spoken(path)}
        </button>
      )}
      {measurement && typed && canBeSure(issue) && (
        <button type="button" onClick={() => send({ does: 'be sure', name: measurement, sure: true })}>
          {letItStand}
          <span class="unseen">: {spoken(path)}</span>
        </button>
      )}
    </p>
  );
}
