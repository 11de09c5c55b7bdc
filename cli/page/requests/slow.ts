import type { PageRequest } from '../messages.ts';

/**
 * Requests that take longer than a draft: each of these kinds has a worker of its own, begun when it is first asked, so that
 * the drawing never waits for it.
 */
export const slowKinds: ReadonlySet<PageRequest['kind']> = new Set([
  'lay',
  'lesson',
  'link',
  'pictures',
  'sizes',
  'study',
  'take',
  'wear',
]);
