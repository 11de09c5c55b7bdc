import type { Body, Garment, Issue, Result, Styling } from '../../../drafts/index.ts';
import { Unusable, unusable } from '../../input/unusable.ts';
import { checkedDraft, checkedGarment } from '../../own-draft/checked-draft.ts';
import type { GarmentChoices } from '../garment-choices.ts';
import type { Port } from './port.ts';
import { type DrawingQuestion, drawingAnswer, isModest } from './questions.ts';

/** For so long code may take for one answer before it is taken for an endless loop, ms; the first time it is loaded too. */
const limits = { first: 12_000, later: 6000 } as const;

/** What is in the way of a draft that is run elsewhere. */
const mistake = (message: string): Issue => ({
  code: 'draft-mistake',
  severity: 'error',
  path: '',
  message,
});

/** A draft of one's own, which is run apart and asked over a port, one question at a time. */
export class Elsewhere {
  readonly #port: Port;
  #heard: (data: unknown) => void = () => {};
  readonly #ended: (why: Issue) => void;
  #limit: number = limits.first;
  #last: Promise<unknown> = Promise.resolve();
  #over: Unusable | undefined;
  /** Fails whoever waits for an answer. */
  #fail: (why: Unusable) => void = () => {};

  /** `ended` is told once where it ran too long, or answered what is no answer: it is asked no more. */
  constructor(port: Port, ended: (why: Issue) => void) {
    this.#port = port;
    this.#ended = ended;
    port.addEventListener('message', ({ data }) => this.#heard(data));
    port.start();
  }

  /** What it says of itself, checked as far as it can be undrawn. Throws `Unusable` where it is no draft. */
  async described(): Promise<GarmentChoices> {
    const { garment, issues } = await this.#ask('described', { kind: 'describe' });
    if (!garment) throw new Unusable(issues);
    const undrawn = { ...garment, draw: () => ({ ok: false, issues: [] }) };
    const nowhere = () => undefined;
    const source = {
      placeOf: nowhere,
      exported: nowhere,
      mistake: (error: unknown) => mistake(String(error)),
    };
    const { name, title, choices, shapedBy } = checkedDraft({ default: undrawn }, garment.name, source);
    return { name, title, choices, shapedBy };
  }

  /** A garment as it draws it, or why not. Throws `Unusable` where it gives no answer. */
  async drawn(question: Omit<Extract<DrawingQuestion, { kind: 'draw' }>, 'kind'>): Promise<Result<Garment>> {
    const { drawn } = await this.#ask('drawn', { kind: 'draw', ...question });
    if (!drawn.ok) return drawn;
    if (!isModest(drawn.value))
      return {
        ok: false,
        issues: [
          mistake('What the draft hands back is too large for a garment, or has a number that is none.'),
        ],
      };
    return checkedGarment(drawn.value, drawn.issues);
  }

  /** How each place of the garment answers to each measurement. */
  async sensitivities(body: Body, styling: Styling) {
    return (await this.#ask('sensed', { kind: 'sensitivities', body, styling })).found;
  }

  /** It is asked no more: whoever waits for an answer is told why, and whoever asks. */
  end(why: Unusable): void {
    if (this.#over) return;
    this.#over = why;
    this.#port.close();
    this.#fail(why);
  }

  async #ask<Kind extends Answer['kind']>(
    kind: Kind,
    question: DrawingQuestion,
  ): Promise<Extract<Answer, { readonly kind: Kind }>> {
    const before = this.#last;
    const asking = before.then(
      () => this.#answer(kind, question),
      () => this.#answer(kind, question),
    );
    this.#last = asking;
    return asking;
  }

  #answer<Kind extends Answer['kind']>(
    kind: Kind,
    question: DrawingQuestion,
  ): Promise<Extract<Answer, { readonly kind: Kind }>> {
    return new Promise((answer, fail) => {
      if (this.#over) return fail(this.#over);
      const over = (why: Issue): void => {
        this.end(new Unusable([why]));
        this.#ended(why);
      };
      const limit = this.#limit;
      const timer = setTimeout(
        () =>
          over(
            mistake(`The code was ended: it ran longer than ${limit / 1000} seconds. Does a loop never end?`),
          ),
        limit,
      );
      this.#fail = (why) => {
        clearTimeout(timer);
        fail(why);
      };
      this.#heard = (data) => {
        clearTimeout(timer);
        this.#limit = limits.later;
        const read = drawingAnswer.safeParse(data);
        if (read.success && isOfKind(kind, read.data)) answer(read.data);
        else over(mistake('The code answered what is no answer, and was ended.'));
      };
      this.#port.postMessage(question);
    });
  }
}

type Answer = ReturnType<typeof drawingAnswer.parse>;

const isOfKind = <Kind extends Answer['kind']>(
  kind: Kind,
  answer: Answer,
): answer is Extract<Answer, { readonly kind: Kind }> => answer.kind === kind;

/** Said where other code has been written since. */
export const superseded = (): Unusable =>
  unusable('draft-mistake', '', 'The code has been changed since: ask again.');
