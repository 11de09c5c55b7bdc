import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import { type PanelCut, panelTop } from '../bodice/panel-cut.ts';
import type { Finishing } from '../finishing.ts';
import { nothing, type Parts } from '../parts.ts';
import { drawEdges, straight } from '../piece-edges.ts';
import { strapSewing } from './sewing.ts';
import { strapShapes } from './shapes.ts';
import { strapPieces } from './strap-pieces.ts';
import { strapJoins, strapSeams } from './strap-seams.ts';

/** The straps as a part of the bodice: cut off the panels as they lie above them. */
export function strapParts(
  table: DraftingTable<readonly []>,
  cut: PanelCut,
  sleeves: boolean,
  finishing: Finishing,
): Parts {
  table.heading('The straps');
  table.say`Straps: cut off front and back above their necklines, dart closed, and turned upright; laid together at the shoulder they have neckline and armhole for their edges`;
  const pieces = strapPieces(cut, sleeves);
  for (const piece of pieces) drawEdges(table, piece);
  for (const part of ['front', 'back'] as const)
    table.line(part, 'strap', straight(panelTop(cut, part), cut.plan.lines[part].sideCorner));
  return {
    ...nothing,
    pieces,
    seams: strapSeams(cut),
    joins: strapJoins(cut),
    shapes: strapShapes(cut),
    sewing: strapSewing(sleeves, finishing),
  };
}
