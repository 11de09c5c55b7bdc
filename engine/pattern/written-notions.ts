import type { Notion } from './garment.ts';

/** Notions as a sheet tells of them: what to have, and not how it is sold. */
export const writtenNotions = (notions: readonly Notion[]): readonly Notion[] =>
  notions.map(({ got: _, finished: _joined, ...written }) => written);
