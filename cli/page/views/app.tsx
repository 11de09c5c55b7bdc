import { capital } from '../../../drafts/index.ts';
import { isUntouched, isUpToDate, type PageState, pageViews } from '../state.ts';
import { Checks } from './checks.tsx';
import { Choose } from './choose.tsx';
import { Drawing } from './drawing.tsx';
import { Measure } from './measure.tsx';
import { Pieces } from './pieces.tsx';
import { Take } from './take.tsx';
import type { FileViewProps } from './view.ts';

/** The whole page. */
export function App(props: FileViewProps) {
  const { state, send } = props;
  const beside = state.wide && (state.view === 'measure' || state.view === 'choose');
  return (
    <>
      <header class="top">
        <a class="skip" href="#view">
          To the form
        </a>
        <p class="mark">Bodkin</p>
        <nav aria-label="Views">
          {pageViews.map((view) => (
            <a key={view} href={`#${view}`} aria-current={view === state.view ? 'page' : undefined}>
              {capital(view)}
            </a>
          ))}
        </nav>
        <p class="standing" role="status">
          {standing(state)}
        </p>
      </header>
      <div class={beside ? 'body beside' : 'body'}>
        <main id="view">
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
          <View {...props} />
        </main>
        {beside && (
          <aside aria-label="The drawing">
            <Drawing state={state} send={send} />
          </aside>
        )}
      </div>
      <footer class="foot">
        <p>
          What you type is kept in this browser, on this device, and goes nowhere else.{' '}
          <button type="button" onClick={() => send({ does: 'forget' })}>
            Delete all that is kept
          </button>
        </p>
      </footer>
    </>
  );
}

function View(props: FileViewProps) {
  switch (props.state.view) {
    case 'measure':
      return <Measure {...props} />;
    case 'choose':
      return <Choose {...props} />;
    case 'pieces':
      return <Pieces {...props} />;
    case 'checks':
      return <Checks {...props} />;
    case 'take':
      return <Take {...props} />;
  }
}

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
