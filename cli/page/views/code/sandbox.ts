import { frameDocument } from './frame.ts';
import { type RunAnswer, type RunQuestion, runAnswer } from './questions.ts';

/** A draft that is run apart, for as long as it is wanted. */
export interface Sandbox {
  /**
   * Asks it, one question at a time; fails with a `RunFault` where no answer of the right shape comes in time. After that it has
   * ended.
   */
  readonly ask: (question: RunQuestion) => Promise<RunAnswer>;
  /** An end of a channel of its own, over which somebody else asks it. */
  readonly further: () => MessagePort;
  readonly end: () => void;
}

/** Why edited code was ended. */
export class RunFault extends Error {
  /** The line of the script, from 1, where it could not even be read. */
  readonly line: number | undefined;

  constructor(message: string, line?: number) {
    super(message);
    this.line = line;
  }
}

/** For so long code may run before it is taken for an endless loop, ms; the first time it is loaded too. */
const limits = { first: 8000, later: 4000 } as const;

/** What answers which question; that it could not be begun answers any. */
const answering = { draft: 'drafted', cases: 'cases', try: 'tried' } as const;

/** Begins a linked script, with the program behind it, in a frame of its own. */
export function openSandbox(script: string, program: Blob): Sandbox {
  const { port1: port, port2: other } = new MessageChannel();
  const frame = document.createElement('iframe');
  frame.setAttribute('sandbox', 'allow-scripts');
  frame.hidden = true;
  frame.title = 'Where edited code is run';
  let ended = false;
  let limit: number = limits.first;
  let over = new RunFault('The code was ended.');
  let waiting:
    | {
        readonly kind: RunAnswer['kind'];
        readonly answer: (data: RunAnswer) => void;
        readonly fail: (fault: RunFault) => void;
      }
    | undefined;
  const end = (): void => {
    ended = true;
    port.close();
    frame.remove();
  };
  const failed = (fault: RunFault): void => {
    const asked = waiting;
    waiting = undefined;
    // Where nobody waits for it, whoever asks next is told.
    over = fault;
    end();
    asked?.fail(fault);
  };
  const noAnswer = (): void => failed(new RunFault('The code answered what is no answer, and was ended.'));
  port.onmessageerror = noAnswer;
  port.onmessage = ({ data }: MessageEvent<unknown>) => {
    const read = runAnswer.safeParse(data);
    // What was not asked for, or is no answer, comes from code that does not play by the rules.
    if (read.success && read.data.kind === 'failed')
      return failed(new RunFault(read.data.message, read.data.line));
    if (!read.success || read.data.kind !== waiting?.kind) return noAnswer();
    const { answer } = waiting;
    waiting = undefined;
    answer(read.data);
  };
  const begun = new Promise<void>((resolve) => {
    frame.addEventListener(
      'load',
      () => {
        const code = new Blob([script, '\n', program], { type: 'text/javascript' });
        frame.contentWindow?.postMessage(code, '*', [other]);
        resolve();
      },
      { once: true },
    );
  });
  frame.srcdoc = frameDocument;
  document.body.append(frame);
  return {
    end,
    further: () => {
      const { port1: own, port2: its } = new MessageChannel();
      void begun.then(() => {
        if (!ended) port.postMessage(undefined, [its]);
      });
      return own;
    },
    ask: async (question) => {
      await begun;
      if (ended) throw over;
      let timer = 0;
      let answered: RunAnswer;
      try {
        answered = await new Promise<RunAnswer>((answer, fail) => {
          waiting = { kind: answering[question.kind], answer, fail };
          timer = window.setTimeout(
            () =>
              failed(
                new RunFault(
                  `The code was ended: it ran longer than ${limit / 1000} seconds. Does a loop never end?`,
                ),
              ),
            limit,
          );
          port.postMessage(question);
        });
      } finally {
        clearTimeout(timer);
        limit = limits.later;
      }
      // Reading an answer takes its time, and so does what is drawn from it: the page is free between them.
      await new Promise((free) => setTimeout(free, 0));
      return answered;
    },
  };
}
