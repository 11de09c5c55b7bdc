import { FILE } from '../geometry/tolerance.ts';
import { fates } from './fate.ts';
import type { KnownDraft } from './known-draft.ts';

/** Whether two records are of one draft: the same garment for the same wearer, its seams as long to 0.1 mm. */
export const sameDraft = (one: KnownDraft, other: KnownDraft): boolean =>
  one.garment === other.garment &&
  one.body === other.body &&
  fates(one.figures.seams, other.figures.seams, ({ name }) => name).every(
    (fate) =>
      fate.kind === 'kept' &&
      Math.abs(fate.before.lengthA - fate.after.lengthA) <= FILE &&
      Math.abs(fate.before.lengthB - fate.after.lengthB) <= FILE,
  );
