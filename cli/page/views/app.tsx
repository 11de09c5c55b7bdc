import type { ComponentChildren } from 'preact';
import { hasDrawingBeside, isUntouched, isUpToDate, type PageState } from '../state.ts';
import { viewEntries } from '../view-names.ts';
import { ByCode } from './by-code.tsx';
import { Drawing } from './drawing/drawing.tsx';
import { Link } from './link.tsx';
import { LoadedView } from './loaded-view.tsx';
import type { FileViewProps } from './view.ts';

/** The whole page. */
export function App(props: FileViewProps) {
  const { state, send } = props;
  const beside = hasDrawingBeside(state);
  return (
    <>
      <header class="top">
        <Jump to="view" type="skip">
          Past the views
        </Jump>
        <p class="mark">Bodkin</p>
        <nav id="views" aria-label="Views" tabIndex={-1}>
          {viewEntries.map(({ name, title }) => (
            <a
              key={name}
              href={`#${name}`}
              aria-label={title}
              aria-current={name === state.view ? 'page' : undefined}
            >
              <Title of={title} />
            </a>
          ))}
        </nav>
        <Steps {...props} />
        <p class="standing" role="status">
          {standing(state)}
        </p>
      </header>
      <div class={beside ? 'body beside' : 'body'}>
        <main id="view" tabIndex={-1}>
          {state.notice && (
            <p class="notice" role="alert">
              {state.notice}{' '}
              {state.before && (
                <button type="button" onClick={() => send({ does: 'take back' })}>
                  Back to what was there
                </button>
              )}{' '}
              <button type="button" onClick={() => send({ does: 'note', notice: undefined })}>
                Close this note
              </button>
            </p>
          )}
          <ByCode state={state} send={send} />
          <LoadedView {...props} />
        </main>
        {beside && (
          <aside aria-label="The drawing">
            <Drawing state={state} send={send} aspect={1} />
          </aside>
        )}
      </div>
      <footer class="foot">
        <Link state={state} send={send} />
        <p>
          <Jump to="views">Back to the views</Jump>
        </p>
        <p>
          {state.keeps ? (
            'What you type is kept in this browser, on this device, and goes nowhere else.'
          ) : (
            <strong>
              This browser could not keep what you typed: once the page is closed it is gone. Save the
              measurements as a file, under Take.
            </strong>
          )}{' '}
          <button type="button" onClick={() => send({ does: 'forget' })}>
            Delete all that is kept
          </button>
        </p>
      </footer>
    </>
  );
}

/** A title of which the last word alone is seen where there is little room. */
function Title({ of }: { readonly of: string }) {
  const at = of.lastIndexOf(' ') + 1;
  if (at === 0) return <>{of}</>;
  return (
    <>
      <span class="longer">{of.slice(0, at)}</span>
      <span>{of.slice(at)}</span>
    </>
  );
}

/** Leads to another place of the page; the address stays that of the view. */
function Jump({ to, type, children }: { to: string; type?: string; children: ComponentChildren }) {
  return (
    <a
      class={type}
      href={`#${to}`}
      onClick={(event) => {
        event.preventDefault();
        const there = document.getElementById(to);
        there?.scrollIntoView();
        there?.focus({ preventScroll: true });
      }}
    >
      {children}
    </a>
  );
}

/** One step back or on. */
const Steps = ({ state: { history }, send }: FileViewProps) => (
  <p class="steps">
    <button type="button" disabled={history.past.length === 0} onClick={() => send({ does: 'undo' })}>
      Undo
    </button>
    <button type="button" disabled={history.future.length === 0} onClick={() => send({ does: 'redo' })}>
      Redo
    </button>
  </p>
);

/** How it stands, in one sentence. */
function standing(state: PageState): string {
  const { answer, garment } = state;
  if (isUntouched(state)) return 'Nothing is measured yet.';
  if (!answer) return 'Drafting …';
  const { made, issues } = answer;
  if (made?.ok) return `The ${made.garment} is drawn, and every check is true.`;
  if (made) return `The ${made.garment} is drawn, but not every check is true.`;
  const errors = issues.filter(({ severity }) => severity === 'error');
  const missing = errors.filter(({ code }) => code === 'measurement-missing').length;
  if (missing === errors.length)
    return `${missing === 1 ? 'One measurement is' : `${missing} measurements are`} still needed for the ${garment}.`;
  const hinder = errors.length === 1 ? 'One thing stands' : `${errors.length} things stand`;
  return `${hinder} in the way of the ${garment}${isUpToDate(state) ? '.' : ' …'}`;
}
