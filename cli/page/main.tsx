import { render } from 'preact';
import { newestFirst } from './drafter.ts';
import { keptText, withKept } from './kept.ts';
import type { PageAnswer, PageRequest } from './messages.ts';
import { type PageAction, reduce } from './reducer.ts';
import { saveFile } from './save-file.ts';
import { draftRequest, emptyState, type PageState, pageViews } from './state.ts';
import { App } from './views/app.tsx';

/*
 * The page put together: the state changes by the reducer alone; after each change the views are drawn, a new draft is
 * asked of the worker where one is wanted, and what was typed is kept in the browser.
 */

const store = 'bodkin';
const wide = matchMedia('(min-width: 70rem)');
const root = document.getElementById('page') ?? document.body;
const worker = new Worker('worker.js', { type: 'module' });
const ask = (request: PageRequest): void => worker.postMessage(request);
const drafter = newestFirst({ postMessage: ask });

let state: PageState = { ...withKept(emptyState, stored()), wide: wide.matches, asked: 1 };

function send(action: PageAction): void {
  const before = state;
  state = reduce(state, action);
  if (state.asked !== before.asked) drafter.want(draftRequest(state));
  keep(action);
  show();
  if (state.view !== before.view) begin();
}

const show = (): void => {
  document.title = `${state.view[0]?.toUpperCase()}${state.view.slice(1)} · Bodkin`;
  render(<App state={state} send={send} ask={ask} open={open} />, root);
};

/** A view begins at its heading, for whoever sees it and whoever hears it. */
function begin(): void {
  scrollTo(0, 0);
  document.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
}

/** What was kept; none where the browser keeps nothing. */
function stored(): string | null {
  try {
    return localStorage.getItem(store);
  } catch {
    return null;
  }
}

function keep({ does }: PageAction): void {
  try {
    if (does === 'forget') localStorage.removeItem(store);
    else if (does !== 'hear' || state.notice !== undefined) localStorage.setItem(store, keptText(state));
  } catch {
    // A browser that keeps nothing still drafts.
  }
}

/** No file of measurements is larger (bytes); a larger one is not even read. */
const largest = 400_000;

/** Opens a file that was chosen or dropped. */
async function open(file: File): Promise<void> {
  if (file.size > largest) send({ does: 'note', notice: `${file.name} is too large for measurements.` });
  else
    try {
      ask({ kind: 'open', file: file.name, text: await file.text() });
    } catch {
      send({ does: 'note', notice: `${file.name} cannot be read.` });
    }
}

worker.addEventListener('message', ({ data }: MessageEvent<PageAnswer>) => {
  drafter.hear(data);
  if (data.kind === 'written') saveFile(data.file);
  send({ does: 'hear', answer: data });
});
worker.addEventListener('error', () =>
  send({ does: 'note', notice: 'The program that drafts could not be loaded. Load the page again.' }),
);
wide.addEventListener('change', ({ matches }) => send({ does: 'widen', wide: matches }));

const viewed = (): void => {
  const view = pageViews.find((each) => `#${each}` === location.hash);
  if (view && view !== state.view) send({ does: 'view', view });
};
addEventListener('hashchange', viewed);
addEventListener('dragover', (event) => event.preventDefault());
addEventListener('drop', (event) => {
  event.preventDefault();
  const [file] = event.dataTransfer?.files ?? [];
  if (file) void open(file);
});

viewed();
show();
drafter.want(draftRequest(state));
