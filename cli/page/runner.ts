import './no-made-code.ts';
import type { RunQuestion } from './views/code/questions.ts';
import { type LinkedDraft, runDraft } from './views/code/run-draft.ts';

/*
 * What is run behind the files of an edited draft, in a worker of a sandboxed frame (`views/code/frame.ts`): it answers over the
 * port that it is handed.
 */

self.addEventListener(
  'message',
  ({ ports: [port] }: MessageEvent) => {
    if (!port) return;
    const answer = runDraft(self as LinkedDraft);
    port.onmessage = ({ data }: MessageEvent<RunQuestion>) => port.postMessage(answer(data));
  },
  { once: true },
);
