import type { Solver } from '../../engine/constraints/solve.ts';
import type { Result } from '../../engine/issue.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import type { Parts } from '../parts.ts';
import type { sleeveChoices } from './choices.ts';
import { drawPlainSleeve } from './plain-sleeve.ts';
import { drawPuffSleeve } from './puff-sleeve.ts';

/** Draws the sleeve that was chosen; nothing where there is none. */
export function drawSleeve(
  table: DraftingTable<typeof sleeveChoices>,
  cut: PanelCut,
  solver?: Solver,
): Result<Parts> | undefined {
  switch (table.styling.sleeve) {
    case 'none':
      return undefined;
    case 'plain':
      return drawPlainSleeve(table, cut, solver);
    default:
      return drawPuffSleeve(table, cut, solver);
  }
}
