import { garments } from '../../drafts/garments.ts';
import type { Draft } from '../../engine/pattern/draft.ts';

/** Where a worker finds a draft for itself: by its name among those of the program, or in a file of one's own. */
export interface DraftThere {
  readonly garment: string;
  readonly file: string | undefined;
}

/** Where a worker would find a draft; nothing where it is known on this thread only. */
export const draftThere = (draft: Draft, file: string | undefined): DraftThere | undefined =>
  file !== undefined || garments.includes(draft) ? { garment: draft.name, file } : undefined;
