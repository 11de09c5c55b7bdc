import * as z from 'zod';
import type { PageAnswer, PageRequest } from './messages.ts';

/*
 * The worker's side of the page: every request is answered. The engine is loaded only after this is said, for it makes
 * its schemas when it is loaded: the security policy forbids code made from text, and even asking whether it may be made
 * would be reported as an attempt.
 */
z.config({ jitless: true });
const answers = import('./answers.ts');

const tell = (answer: PageAnswer): void => self.postMessage(answer);

self.addEventListener('message', async ({ data }: MessageEvent<PageRequest>) =>
  (await answers).answer(data, tell),
);
answers.then(
  ({ garmentsAnswer }) => tell(garmentsAnswer()),
  () =>
    tell({ kind: 'refused', message: 'The program that drafts could not be loaded. Load the page again.' }),
);
