import type { PieceEdge } from '../../engine/pattern/piece.ts';
import { sewingRank } from '../sewing-rank.ts';

/** An edge that is turned under and sewn by hand, when all else is done. */
export const felled = (edge: PieceEdge): PieceEdge => ({ ...edge, rank: sewingRank.felled });

/** What the lining of a panel is called. */
export const liningOf = (panel: string): string => `${panel} lining`;
