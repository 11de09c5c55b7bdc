import type { Edge } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import { signedArea } from '../geometry/outline.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Panel } from './panel.ts';

/** Below the waist, where cloth hangs, triangles need be no smaller than this, mm. */
const HANGING = 20;

/**
 * Across what is narrow, such as a strap, lie so many triangles, or half as large ones as elsewhere. With fewer a strap does not
 * twist: its edge stood 7 mm off in the hollow above a breast on a mesh of 14 mm, and 3 mm on one of 7.
 */
const ACROSS = 4;

/** How far apart the points of a panel lie, mm, in a garment meshed at `spacing`. */
export const spacingOf = ({ girths }: Garment, { name, piece }: Panel, spacing: number): number => {
  if (girths.some(({ level, parts }) => level === 'hip' && parts.some((part) => part.piece === name)))
    return Math.max(HANGING, spacing);
  return Math.min(spacing, Math.max(spacing / 2, breadthOf(piece.edges) / ACROSS));
};

/** How broad a strip of the same area and outline is, mm. */
function breadthOf(edges: readonly Edge[]): number {
  const around = edges.reduce((sum, edge) => sum + edgeLength(edge), 0) / 2;
  const area = Math.abs(signedArea(edges));
  return (around - Math.sqrt(Math.max(0, around * around - 4 * area))) / 2;
}
