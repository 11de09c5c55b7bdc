import type { Join, SeamCorner } from '../../engine/pattern/seam.ts';

/** The corner of a piece where an edge meets a seam. */
export const at = (piece: string, edge: string, seam: string): SeamCorner => ({ piece, edge, seam });

/** A line that runs on from one corner to another over a seam. */
export const across = (name: string, a: SeamCorner, b: SeamCorner): Join => ({ kind: 'across', name, a, b });

/** The mark of a join whose line turns by design. */
export const turning = (turns: boolean): { readonly turns?: true } => (turns ? { turns } : {});
