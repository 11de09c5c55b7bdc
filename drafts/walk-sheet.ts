import type { Result } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import { type WalkedSheet, walkSheet as walkLines } from '../engine/reading/walk-sheet.ts';
import { garments } from './garments.ts';
import { likeOf } from './like-of.ts';

/**
 * Walks a written sheet again from its paths alone, and sees that it leaves out nothing that its garment must have. `known`
 * are the drafts it may be of. Fails when the file cannot be read as a sheet.
 */
export const walkSheet = (svg: string, known: readonly Draft[] = garments): Result<WalkedSheet> =>
  walkLines(svg, likeOf(known));
