import type { PageAnswer, PageRequest } from '../messages.ts';
import type { PageAction } from '../page-action.ts';
import type { PageIssue } from '../page-issue.ts';
import type { CodeProblem } from '../requests/link.ts';
import type { PageState } from '../state.ts';
import { openSandbox, type Sandbox } from '../views/code/sandbox.ts';
import { beginning, runner } from '../views/code/sources.ts';
import { codeKey, filesNow } from '../views/code/written-code.ts';
import type { OwnDraftRequest } from './messages.ts';

interface Page {
  readonly ask: (request: PageRequest) => void;
  readonly send: (action: PageAction) => void;
}

/** How far code is that is to draw: run apart, or in whose way something stands. */
type Run =
  | { readonly is: 'begun' }
  | { readonly is: 'running'; readonly sandbox: Sandbox }
  | { readonly is: 'stopped'; readonly problem: PageIssue };

/**
 * Runs the code that draws the views in the place of the program's own draft: links it, begins it in a sandbox of its own,
 * and hands the workers that draft, lay, grade, hang and write an end of a channel to it each. They get from there nothing but
 * pieces and what a draft says of itself; all that is checked, drawn and written of these they do themselves.
 */
export class UsedCode {
  readonly #page: Page;
  #key: string | undefined;
  #linking = false;
  #run: Run = { is: 'begun' };
  #loading: string | undefined;
  /** Who was handed which code. */
  readonly #handed = new Map<Worker, string>();
  readonly #waiting = new Map<Worker, string>();

  constructor(page: Page) {
    this.#page = page;
  }

  /** To be told of every state: begins what it makes necessary. */
  update({ byCode, own: { code } }: PageState): void {
    const key = byCode ? codeKey(code) : undefined;
    if (key !== this.#key) {
      this.#leave(key);
      this.#begin(key);
    }
    if (key === undefined || this.#linking) return;
    if (Object.keys(code.original).length === 0) this.#load(code.of?.name);
    else {
      this.#linking = true;
      this.#page.ask({ kind: 'link', key, asks: 'views', files: filesNow(code) });
    }
  }

  /** Runs it from the beginning, where it was ended. */
  again(): void {
    this.#begin(undefined);
  }

  /** To be told each answer. */
  hear(answer: PageAnswer): void {
    if (answer.kind === 'linked' && answer.asks === 'views' && answer.key === this.#key)
      void this.#linked(answer.key, answer.script, answer.problem);
    if (answer.kind === 'own draft' && answer.ended && answer.key === this.#key) this.#stop(answer.ended);
  }

  /** Sees to it that a worker has the way to this code, now or once it runs. */
  hand(worker: Worker, key: string): void {
    if (this.#handed.get(worker) === key) return;
    this.#waiting.set(worker, key);
    this.#handWaiting();
  }

  /** Tells whoever was to draw by other code that this is over: they would wait for a frame that is closed, or never opened. */
  #leave(next: string | undefined): void {
    for (const [worker, key] of [...this.#handed, ...this.#waiting])
      if (key !== next) tellWorker(worker, key, { how: 'over' });
    for (const [worker, key] of this.#waiting) if (key !== next) this.#waiting.delete(worker);
  }

  #begin(key: string | undefined): void {
    if (this.#run.is === 'running') this.#run.sandbox.end();
    this.#run = { is: 'begun' };
    this.#key = key;
    this.#linking = false;
    this.#handed.clear();
  }

  #load(name: string | undefined): void {
    if (name === undefined || this.#loading === name) return;
    this.#loading = name;
    beginning(name).then(
      (what) => {
        this.#loading = undefined;
        this.#page.send({ does: 'within', view: 'code', what });
      },
      () => {
        this.#loading = undefined;
        this.#stop(problemOf({ message: 'The source of the drafts could not be loaded.' }));
      },
    );
  }

  async #linked(key: string, script: string | undefined, problem: CodeProblem | undefined): Promise<void> {
    if (script === undefined) return this.#stop(problemOf(problem ?? { message: 'It cannot be read.' }));
    try {
      const program = await runner();
      if (key !== this.#key) return;
      this.#run = { is: 'running', sandbox: openSandbox(script, program) };
      this.#handWaiting();
    } catch {
      this.#stop(problemOf({ message: 'The program that runs the code could not be loaded.' }));
    }
  }

  #stop(problem: PageIssue): void {
    if (this.#run.is === 'running') this.#run.sandbox.end();
    this.#run = { is: 'stopped', problem };
    // Those that wait for an answer of it are told as well.
    for (const [worker, key] of this.#handed) if (!this.#waiting.has(worker)) this.#waiting.set(worker, key);
    this.#handed.clear();
    this.#handWaiting();
  }

  #handWaiting(): void {
    if (this.#run.is === 'begun') return;
    for (const [worker, key] of this.#waiting) {
      if (key !== this.#key) continue;
      this.#waiting.delete(worker);
      this.#handed.set(worker, key);
      hand(worker, key, this.#run);
    }
  }
}

function hand(worker: Worker, key: string, run: Exclude<Run, { is: 'begun' }>): void {
  if (run.is === 'stopped') tellWorker(worker, key, { how: 'stopped', problem: run.problem });
  else {
    const port = run.sandbox.further();
    tellWorker(worker, key, { how: 'running', port }, port);
  }
}

function tellWorker(worker: Worker, key: string, is: OwnDraftRequest['is'], ...handed: MessagePort[]): void {
  const request: OwnDraftRequest = { kind: 'own draft', key, is };
  worker.postMessage(request, handed);
}

function problemOf({ message, file, line }: CodeProblem): PageIssue {
  const place = file === undefined ? '' : `${file}${line === undefined ? '' : `, line ${line}`}: `;
  return { code: 'draft-not-loaded', severity: 'error', path: '', message: `${place}${message}` };
}
