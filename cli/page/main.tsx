import { render } from 'preact';
import { newestFirst } from './drafter.ts';
import { keepingFrom } from './keeping.ts';
import { withKept } from './kept.ts';
import { keyedWay } from './keyed-way.ts';
import { type Linked, linkedIn } from './link.ts';
import { codeAsked, type PageAnswer, type PageRequest } from './messages.ts';
import type { UsedCode } from './own-draft/used-code.ts';
import type { PageAction } from './page-action.ts';
import { reduce } from './reducer.ts';
import { slowKinds } from './requests/slow.ts';
import { saveFile } from './save-file.ts';
import { draftRequest, emptyState, isUpToDate, type PageState, partsShown } from './state.ts';
import { store } from './store.ts';
import { isView, viewEntry } from './view-names.ts';
import { App } from './views/app.tsx';
import { whenQuiet } from './when-quiet.ts';

/*
 * The page put together: the state changes by the reducer alone; after each change the views are drawn, a new draft is
 * asked of the worker where one is wanted, and what was typed is kept in the browser.
 */

const wide = matchMedia('(min-width: 70rem)');
const onPaper = matchMedia('print');
const root = document.getElementById('page') ?? document.body;
const drafting = newWorker();
const slow = new Map<PageRequest['kind'], Worker>();
const drafter = newestFirst({ postMessage: (request) => post(drafting, request) });

/** Asks a worker: the one that drafts, or one that is kept for what takes long. */
function ask(request: PageRequest): void {
  const { kind } = request;
  const worker = slowKinds.has(kind) ? (slow.get(kind) ?? newWorker()) : drafting;
  if (worker !== drafting) slow.set(kind, worker);
  post(worker, request);
}

/** Whoever is asked for what code draws is handed the way to it. */
function post(worker: Worker, request: PageRequest): void {
  worker.postMessage(request);
  const code = codeAsked(request);
  if (code !== undefined) void usedCode().then((used) => used.hand(worker, code));
}

/** What runs the code that draws the views, loaded when it is first wanted. */
let using: Promise<UsedCode> | undefined;
function usedCode(): Promise<UsedCode> {
  using ??= import('./own-draft/used-code.ts').then(({ UsedCode }) => new UsedCode({ ask, send }));
  return using;
}

const was = withKept(emptyState, store.text());
const keeping = keepingFrom(was, store);
let state: PageState = begun({ ...was, wide: wide.matches });

/** The state with its first draft asked for. */
function begun(kept: PageState): PageState {
  const view = location.hash.slice(1);
  const linked = followed();
  const shown = isView(view) ? { ...kept, view } : kept;
  const next = linked ? reduce(shown, { does: 'follow', linked }) : shown;
  // Of the first view too, so that the browser's way back leads to it.
  if (!isView(location.hash.slice(1))) history.replaceState(undefined, '', `#${next.view}`);
  return { ...next, asked: 1, wanted: partsShown(next) };
}

/** What the address says, once: a reload shows what has been made of it since. */
function followed(): Linked | undefined {
  const linked = linkedIn(location.hash);
  if (linked) history.replaceState(undefined, '', `#${linked.view}`);
  return linked;
}

function send(action: PageAction): void {
  const before = state;
  state = reduce(state, action);
  if (state.asked !== before.asked) drafter.want(draftRequest(state));
  if (state.byCode || using)
    void usedCode().then((used) => {
      if (action.does === 'draw by code') used.again();
      used.update(state);
    });
  tidy(action);
  show();
}

/**
 * Once nothing has been changed for a while, and no slider is held, what was typed is kept, and the sheet is written and
 * walked. While the drawing follows a slider there is no time for either.
 */
const rest = whenQuiet(() => {
  if (!isUpToDate(state)) return 'wait on';
  keep();
  if (state.made && (!state.made.proven || state.earlier)) send({ does: 'pause' });
  return 'done';
});

/** What works on at something of hers for long. */
const lengthy = ['lay', 'sizes', 'wear'] as const;

function tidy({ does }: PageAction): void {
  if (does === 'forget') {
    keeping.forget(state);
    for (const kind of lengthy) {
      slow.get(kind)?.terminate();
      slow.delete(kind);
    }
  }
  if (does !== 'pause') rest.stir();
}

const show = (): void => {
  document.title = `${viewEntry(state.view).title} · Bodkin`;
  render(<App state={state} send={send} ask={ask} open={open} />, root);
};

function keep(): void {
  const keeps = keeping.keep(state);
  if (keeps !== state.keeps) send({ does: 'keeps', keeps });
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

function newWorker(): Worker {
  const worker = new Worker('worker.js', { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<PageAnswer>) => {
    drafter.hear(data);
    void using?.then((used) => used.hear(data));
    if (data.kind === 'written') saveFile(data.file);
    if ('handed' in data) data.handed.forEach(saveFile);
    send({ does: 'hear', answer: data });
  });
  worker.addEventListener('error', () =>
    send({ does: 'note', notice: 'The program that drafts could not be loaded. Load the page again.' }),
  );
  return worker;
}

addEventListener('pagehide', keep);
// A sheet of paper is narrow, but what is printed is what was on the screen.
wide.addEventListener('change', ({ matches }) => {
  if (!onPaper.matches) send({ does: 'widen', wide: matches });
});

const viewed = (): void => {
  const linked = followed();
  const view = location.hash.slice(1);
  if (linked) send({ does: 'follow', linked });
  else if (isView(view) && view !== state.view) send({ does: 'view', view });
};
addEventListener('hashchange', viewed);
addEventListener('dragover', (event) => event.preventDefault());
addEventListener('drop', (event) => {
  event.preventDefault();
  const [file, ...others] = event.dataTransfer?.files ?? [];
  if (others.length > 0)
    send({ does: 'note', notice: 'Nothing was opened: drop the measurements of one person, in one file.' });
  else if (file) void open(file);
});

/** Undo and redo by keys, wherever no text is edited that has its own. */
addEventListener('keydown', (event) => {
  const way = keyedWay(event);
  if (!way || event.defaultPrevented) return;
  if (event.target instanceof HTMLElement && event.target.isContentEditable) return;
  event.preventDefault();
  send({ does: way });
});
// Leaving a field or letting a slider go ends a step that can be undone.
addEventListener('change', () => send({ does: 'settle' }));

// Laid up for when there is no network, once there is nothing better to do.
addEventListener('load', () =>
  setTimeout(() => {
    navigator.serviceWorker?.register('offline.js').catch(() => {
      // A browser that lays nothing up still drafts.
    });
  }, 2000),
);

show();
if (state.byCode) void usedCode().then((used) => used.update(state));
drafter.want(draftRequest(state));
