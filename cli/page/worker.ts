import './jitless.ts';
import { answerTo, garmentsAnswer } from './answers.ts';
import type { PageAnswer, PageRequest } from './messages.ts';

/** The worker's side of the page: every request has one answer. */
const tell = (answer: PageAnswer): void => self.postMessage(answer);

self.addEventListener('message', async ({ data }: MessageEvent<PageRequest>) => tell(await answerTo(data)));
tell(garmentsAnswer());
