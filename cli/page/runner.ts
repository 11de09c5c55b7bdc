import './no-made-code.ts';
import type { DrawingQuestion } from './own-draft/questions.ts';
import type { RunQuestion } from './views/code/questions.ts';
import { type LinkedDraft, runDraft } from './views/code/run-draft.ts';

/*
 * What is run behind the files of an edited draft, in a worker of a sandboxed frame (`views/code/frame.ts`): it answers over the
 * port that it is handed, and over every further port that comes over that.
 */

self.addEventListener(
  'message',
  ({ ports: [port] }: MessageEvent) => {
    if (!port) return;
    const answer = runDraft(self as LinkedDraft);
    const serve = (asked: MessagePort): void => {
      asked.onmessage = ({ data, ports: [further] }: MessageEvent<RunQuestion | DrawingQuestion>) =>
        further ? serve(further) : asked.postMessage(answer(data));
    };
    serve(port);
  },
  { once: true },
);
