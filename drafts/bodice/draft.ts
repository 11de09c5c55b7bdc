import type { Body } from '../../engine/body/body.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { bodiceAllowances } from '../allowances.ts';
import { drawGarment, type Parts } from '../draw-garment.ts';
import { insideBodice } from '../finishing.ts';
import { drawFoundation } from '../foundation/foundation.ts';
import { insertChoices } from '../insert/choices.ts';
import { drawstringNotions, withDrawstringAllowed } from '../insert/drawstring.ts';
import { insertFigures } from '../insert/figures.ts';
import { type InsertLines, type InsertPlace, planInsert } from '../insert/insert-lines.ts';
import { insertPiece } from '../insert/insert-piece.ts';
import { insertSeams } from '../insert/insert-seams.ts';
import { insertRules } from '../insert/rules.ts';
import { insertSewing } from '../insert/sewing.ts';
import { liningChoices } from '../lining/choices.ts';
import { finishInside } from '../lining/draft.ts';
import type { BodiceSetting } from '../lining/inside.ts';
import { drawEdges, solvedCurves, straight } from '../piece-edges.ts';
import { stagesTogether } from '../sewing-stages.ts';
import { bodiceShapedBy } from '../shaped-by.ts';
import { stayNotions } from '../stays.ts';
import { strapSewing } from '../straps/sewing.ts';
import { strapShapes } from '../straps/shapes.ts';
import { strapPieces } from '../straps/strap-pieces.ts';
import { strapJoins, strapSeams } from '../straps/strap-seams.ts';
import { cutArmholes } from './armhole-stretches.ts';
import { backPieces } from './back-pieces.ts';
import { type BodicePlan, planBodice } from './bodice.ts';
import { bodiceGirths, bodiceJoins, bodiceSeams } from './bodice-seams.ts';
import { bodiceChoices } from './choices.ts';
import { levelTexts } from './ease-left.ts';
import { bodiceFigures } from './figures.ts';
import { frontPieces } from './front-pieces.ts';
import { drawStyleLines } from './necklines.ts';
import { type PanelCut, panelTop } from './panel-cut.ts';
import { bodiceRules as rules } from './rules.ts';
import { bodiceSewing } from './sewing.ts';
import { bodiceShapes } from './shapes.ts';
import { chosenStyle } from './style.ts';

/** The choices of the bodice with all that fills, holds and finishes it: panels, insert, straps and lining. */
export const fullBodiceChoices = [...bodiceChoices, ...insertChoices, ...liningChoices] as const;

export type FullBodiceStyling = StylingOf<typeof fullBodiceChoices>;

export type FullBodiceTable = DraftingTable<typeof fullBodiceChoices>;

/** A bodice with all that belongs to it, and what is sewn to it is drawn from. */
export interface MadeBodice {
  readonly parts: Parts;
  readonly cut: PanelCut;
}

/** The place in the front that the insert fills. */
function insertPlace(
  { heading, measured, choice }: FullBodiceTable,
  { foundation: { front, levels }, lines, front: frontLines }: BodicePlan,
): InsertPlace {
  const { underBust, pivot } = front;
  const { corner, sideCorner } = lines.front;
  heading('The insert');
  const side = distance(underBust.side, pivot) + distance(pivot, sideCorner);
  return {
    neckline: measured(
      'Front neckline, each half',
      'from centre front to the strap',
      corner.x,
      front.bustPoint,
      choice.necklineWidth,
    ),
    bust: measured(
      'Bust level, each half of the insert',
      'from centre front to the princess line',
      pivot.x,
      pivot,
    ),
    underBust: measured(
      'Under-bust seam, each half',
      'along the level',
      underBust.centre.x,
      underBust.centre,
    ),
    depth: measured(
      'Insert length at centre front',
      'from the neckline to the under-bust level',
      levels.underBust.value - corner.y,
      levels.underBust,
      front.neckHeight,
      choice.necklineDepth,
    ),
    side: measured(
      'Side of the insert, about',
      'along the chords of the princess line',
      side,
      underBust.side,
      pivot,
      front.neckHeight,
    ),
    sideFront: frontLines.sidePrincess.slice(1),
  };
}

/** Plans panels, insert, straps and lining, to be cut from the solved sketch. */
export function planFullBodice(
  table: FullBodiceTable,
  setting: BodiceSetting,
): (solution: Solution) => MadeBodice {
  const { body, styling } = table;
  const style = chosenStyle(table);
  const foundation = drawFoundation(table, setting.sleeve !== 'none');
  const lines = drawStyleLines(table, foundation, style);
  const plan = planBodice(table, foundation, lines, styling.armholeAllowance);
  const insert = style.front === 'gathered' ? planInsert(table, insertPlace(table, plan)) : undefined;
  return (solution) => {
    const cut = cutOf(plan, solution, body, styling, setting);
    const parts = bodiceParts(table, cut, insert, setting);
    return { cut, parts: finishInside(table, { bodice: parts, cut, setting }) };
  };
}

/** What all pieces are cut from, once the sketch is solved. */
function cutOf(
  plan: BodicePlan,
  solution: Solution,
  body: Body,
  styling: FullBodiceStyling,
  { sleeve }: BodiceSetting,
): PanelCut {
  const notch = sleeve === 'plain' ? rules.plainNotch : rules.puffNotch;
  return {
    plan,
    solution,
    armholes: cutArmholes(plan, solution, notch.value),
    allowance: bodiceAllowances(styling),
    texts: levelTexts(body, plan.foundation),
  };
}

/** The bodice before it is finished inside. */
function bodiceParts(
  table: FullBodiceTable,
  cut: PanelCut,
  insert: InsertLines | undefined,
  setting: BodiceSetting,
): Parts {
  const { body, styling } = table;
  const { plan, solution } = cut;
  const { style } = plan.lines;
  const straps = style.shoulder === 'strap';
  const sleeves = setting.sleeve !== 'none';
  const filled = insert ? insertParts(cut, insert, styling) : undefined;
  const pieces = [
    ...frontPieces(cut, insertRules.flatEnds.value),
    ...backPieces(cut),
    ...(filled ? [filled.piece] : []),
    ...(straps ? drawStraps(table, cut, sleeves) : []),
  ].toSorted((a, b) => a.number - b.number);
  const seams = [...(filled?.seams ?? []), ...bodiceSeams(cut), ...(straps ? strapSeams(cut) : [])];
  const stays = stayNotions(pieces, seams);
  const finishing = insideBodice(styling);
  return {
    pieces,
    seams,
    joins: [...bodiceJoins(cut), ...(straps ? strapJoins(cut) : [])],
    girths: bodiceGirths(body, plan.foundation, style),
    notions: [...(insert ? drawstringNotions(insert, solution, styling) : []), ...stays],
    shapes: [
      ...bodiceFigures(cut, body, styling),
      ...bodiceShapes(cut, body, setting.sleeve === 'plain'),
      ...(straps ? strapShapes(cut) : []),
      ...(insert ? insertFigures(insert) : []),
    ],
    sewing: stagesTogether([
      ...(insert ? [insertSewing(insert, styling, finishing)] : []),
      bodiceSewing(cut, { finishing, tapes: stays.map(({ name }) => name) }),
      ...(straps ? [strapSewing(sleeves, finishing)] : []),
    ]),
  };
}

/** The straps, cut off the panels as they lie above them. */
function drawStraps(table: FullBodiceTable, cut: PanelCut, sleeves: boolean): readonly Piece[] {
  table.heading('The straps');
  table.say`Straps: cut off front and back above their necklines, dart closed, and turned upright; laid together at the shoulder they have neckline and armhole for their edges`;
  const pieces = strapPieces(cut, sleeves);
  for (const piece of pieces) drawEdges(table, piece);
  for (const part of ['front', 'back'] as const)
    table.line(part, 'strap', straight(panelTop(cut, part), cut.plan.lines[part].sideCorner));
  return pieces;
}

/** The insert's piece and seams. */
function insertParts(cut: PanelCut, insert: InsertLines, styling: FullBodiceStyling) {
  const aboveBust = solvedCurves(cut.solution, cut.plan.front.sidePrincess.slice(2));
  const seam = {
    toBust: edgeLength({ name: 'top to bust level', curves: aboveBust }),
    allowance: styling.seamAllowance,
    bustText: cut.texts.bust,
    bustPointInside: styling.princessOffset,
  };
  return {
    piece: insertPiece(insert, cut.solution, styling, seam),
    seams: insertSeams(insert.fullness.value),
  };
}

/** A bodice without sleeves and skirt: its armholes are finished, its waist is left for what it is joined to. */
const onItsOwn: BodiceSetting = { sleeve: 'none', skirt: false, opening: 'back' };

/** The bodice on its own, without sleeves. */
export const bodice: Draft<FullBodiceStyling> = {
  name: 'bodice',
  title: 'Princess-seam bodice: with straps or whole shoulders, its front gathered or plain',
  choices: fullBodiceChoices,
  shapedBy: bodiceShapedBy,
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment({ name: 'bodice', choices: fullBodiceChoices, styling, body, solver }, (table) => {
        const make = planFullBodice(table, onItsOwn);
        return (solution) => ({ ok: true, value: make(solution).parts, issues: [] });
      }),
    ),
};
