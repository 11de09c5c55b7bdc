import { edgeLength } from '../../engine/geometry/edge.ts';
import { distance, point } from '../../engine/geometry/point.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { BodicePlan } from '../bodice/bodice.ts';
import type { bodiceChoices } from '../bodice/choices.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import type { Finishing } from '../finishing.ts';
import { nothing, type Parts } from '../parts.ts';
import { solvedCurves } from '../piece-edges.ts';
import type { insertChoices } from './choices.ts';
import { drawstringNotions } from './drawstring.ts';
import { insertFigures } from './figures.ts';
import { type InsertLines, type InsertPlace, planInsert } from './insert-lines.ts';
import { insertPiece } from './insert-piece.ts';
import { insertJoins, insertSeams } from './insert-seams.ts';
import { insertSewing } from './sewing.ts';

type Table = DraftingTable<readonly [...typeof bodiceChoices, ...typeof insertChoices]>;

/** Asks for the insert of a gathered front, to be cut from the solved sketch. */
export function planFrontInsert(
  table: Table,
  plan: BodicePlan,
): (cut: PanelCut, finishing: Finishing) => Parts {
  table.heading('The insert');
  const lines = planInsert(table, placeOf(table, plan));
  return (cut, finishing) => insertParts(table, lines, cut, finishing);
}

/** The place in the front that the insert fills. */
function placeOf(
  { measured, dimension, laidOut, choice }: Table,
  { foundation: { front }, lines, front: frontLines }: BodicePlan,
): InsertPlace {
  const { underBust, pivot } = front;
  const { corner, sideCorner } = lines.front;
  const side = distance(underBust.side, pivot) + distance(pivot, sideCorner);
  const neckline = measured(
    'Front neckline, each half',
    'from centre front to the strap',
    corner.x,
    front.bustPoint,
    choice.necklineWidth,
  );
  dimension('front', neckline, point(0, corner.y), corner);
  const bust = measured(
    'Bust level, each half of the insert',
    'from centre front to the princess line',
    pivot.x,
    pivot,
  );
  dimension('front', bust, point(0, pivot.y), pivot);
  const seam = measured(
    'Under-bust seam, each half',
    'along the level',
    underBust.centre.x,
    underBust.centre,
  );
  dimension('front', seam, point(0, underBust.centre.y), underBust.centre);
  const depth = measured(
    'Insert length at centre front',
    'from the neckline to the under-bust seam',
    underBust.centre.y - corner.y,
    underBust.centre,
    front.neckHeight,
    ...(choice.necklineDepth === 'auto' ? [] : [choice.necklineDepth]),
  );
  dimension('front', depth, point(0, corner.y), point(0, underBust.centre.y));
  const around = measured(
    'Side of the insert, about',
    'along the chords of the princess line',
    side,
    underBust.side,
    pivot,
    front.neckHeight,
  );
  laidOut(around, 1, () => [
    { on: 'front', from: underBust.side, to: pivot },
    { on: 'front', from: pivot, to: sideCorner },
  ]);
  return {
    neckline,
    bust,
    underBust: seam,
    depth,
    side: around,
    sideFront: frontLines.sidePrincess.slice(1),
  };
}

/** The insert as a part of the bodice. */
function insertParts({ styling }: Table, lines: InsertLines, cut: PanelCut, finishing: Finishing): Parts {
  const { plan, solution, texts } = cut;
  const { pivot, bustPoint } = plan.foundation.front;
  const aboveBust = solvedCurves(solution, plan.front.sidePrincess.slice(2));
  const seam = {
    toBust: edgeLength({ name: 'top to bust level', curves: aboveBust }),
    allowance: styling.seamAllowance,
    bustText: texts.bust,
    bustPointInside: pivot.x - bustPoint.value,
  };
  return {
    ...nothing,
    pieces: [insertPiece(lines, solution, styling, seam)],
    seams: insertSeams(lines.fullness.value),
    joins: insertJoins,
    notions: drawstringNotions(lines, solution, styling),
    shapes: insertFigures(lines),
    sewing: insertSewing(lines, styling, finishing),
  };
}
