import { messageOf } from '../../../../drafts/index.ts';
import { bodyData } from '../../body-form.ts';
import { choicesOf, isUntouched, type PageState } from '../../state.ts';
import type { FileViewProps } from '../view.ts';
import type { Coding } from './coding.ts';
import { Holding } from './holding.ts';
import type { RunQuestion } from './questions.ts';
import { openSandbox, RunFault, type Sandbox } from './sandbox.ts';
import { placeOfLine } from './script-lines.ts';
import { runner, shippedBodies } from './sources.ts';
import { filesNow } from './written-code.ts';

/** Code is run once nobody has typed for so long, ms. */
const pause = 500;

/** What is to be run changes a name each time. */
let runs = 0;

/** Runs edited code as it changes: linked by a worker, then run in a sandbox of its own; the newest alone. */
export class Runs {
  #props: FileViewProps;
  #files: readonly unknown[] = [];
  #key = '';
  #timer = 0;
  #linkedKey = '';
  #sandbox: Sandbox | undefined;
  #asking = false;
  #asked = '';
  readonly #holding = new Holding((what) => this.#tell(what));
  #wasHeld = false;
  /** Asked to be held, as soon as what is written now is linked; with both ends of every choice or without. */
  #toHold: { readonly ends: boolean } | undefined;

  constructor(props: FileViewProps) {
    this.#props = props;
  }

  /** To be told of every state: begins what it makes necessary. */
  update(props: FileViewProps): void {
    this.#props = props;
    const { original, changed, strange, linked, held } = props.state.own.code;
    const files = [original, changed, strange];
    if (files.some((each, i) => each !== this.#files[i])) {
      const first = this.#files[0] !== original || this.#files[2] !== strange;
      this.#files = files;
      this.#plan(first ? 0 : pause);
    }
    if (this.#wasHeld && !held) this.#holding.end();
    this.#wasHeld = held !== undefined;
    if (linked?.key !== this.#key || this.#timer !== 0) return;
    if (this.#linkedKey !== this.#key) void this.#begin();
    else void this.#ask();
    const hold = this.#toHold;
    this.#toHold = undefined;
    if (hold && linked.script !== undefined) void this.#holding.begin(linked.script, hold.ends);
    else if (hold) this.#holding.end();
  }

  /** Runs the code now, be it as it was. */
  now(): void {
    this.#plan(0);
  }

  end(): void {
    clearTimeout(this.#timer);
    this.#timer = 0;
    this.#sandbox?.end();
    this.#holding.end();
    this.#key = '';
  }

  #plan(wait: number): void {
    clearTimeout(this.#timer);
    this.#timer = 0;
    const { original, strange } = this.#props.state.own.code;
    if (strange || Object.keys(original).length === 0) return;
    this.#timer = window.setTimeout(() => {
      this.#timer = 0;
      this.#key = `run ${++runs}`;
      this.#props.ask({
        kind: 'link',
        key: this.#key,
        asks: 'editor',
        files: filesNow(this.#props.state.own.code),
      });
    }, wait);
  }

  async #begin(): Promise<void> {
    this.#linkedKey = this.#key;
    const { script } = this.#props.state.own.code.linked ?? {};
    this.#sandbox?.end();
    this.#sandbox = undefined;
    this.#asked = '';
    if (script === undefined) return;
    const key = this.#key;
    try {
      const program = await runner();
      if (key === this.#key) this.#sandbox = openSandbox(script, program);
    } catch {
      this.#tell({
        does: 'ended',
        key,
        problem: { message: 'The program that runs the code could not be loaded.' },
      });
    }
    void this.#ask();
  }

  /** Asks for the drawing, where the code, the body or a choice is another than last time. */
  async #ask(): Promise<void> {
    const sandbox = this.#sandbox;
    const key = `${this.#linkedKey} ${this.#props.state.asked}`;
    if (!sandbox || this.#asking || key === this.#asked) return;
    this.#asking = true;
    this.#asked = key;
    try {
      const answer = await sandbox.ask(await drawingOf(this.#props.state));
      if (answer.kind === 'drafted' && sandbox === this.#sandbox)
        this.#tell({ does: 'ran', key, ran: answer });
    } catch (error) {
      if (sandbox === this.#sandbox) {
        this.#sandbox = undefined;
        this.#tell({ does: 'ended', key, problem: this.#problem(error) });
      }
    } finally {
      this.#asking = false;
    }
    void this.#ask();
  }

  #problem(error: unknown) {
    const message = messageOf(error);
    const { starts } = this.#props.state.own.code.linked ?? {};
    const line = error instanceof RunFault ? error.line : undefined;
    return { message, ...(line === undefined ? {} : placeOfLine(line, starts ?? [])) };
  }

  /** Holds the draft as it is written now to everybody; with `ends`, to both ends of every choice too. */
  hold(ends: boolean): void {
    this.#toHold = { ends };
    if (this.#timer !== 0) this.#plan(0);
    else this.update(this.#props);
  }

  #tell(what: Coding): void {
    this.#props.send({ does: 'within', view: 'code', what });
  }
}

/** Whom the code is drawn for: her whose measurements stand in the form, and before there are any the first invented body. */
async function drawingOf(state: PageState): Promise<RunQuestion> {
  const [someone = {}] = isUntouched(state) ? await shippedBodies() : [];
  const body = isUntouched(state) ? someone : bodyData(state.form);
  return { kind: 'draft', body, choices: choicesOf(state), turned: {} };
}
