import { edgeLength } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { type Cut, drawGarment, type Parts } from '../draw-garment.ts';
import { insertChoices } from '../insert/choices.ts';
import { drawstringNotions, withDrawstringAllowed } from '../insert/drawstring.ts';
import { insertFigures } from '../insert/figures.ts';
import { type InsertPlace, planInsert } from '../insert/insert-lines.ts';
import { insertPiece } from '../insert/insert-piece.ts';
import { insertSeams } from '../insert/insert-seams.ts';
import { insertRules } from '../insert/rules.ts';
import { insertSewing } from '../insert/sewing.ts';
import { liningChoices } from '../lining/choices.ts';
import { finishInside } from '../lining/draft.ts';
import type { Armhole, BodiceSetting } from '../lining/inside.ts';
import { solvedCurve, solvedCurves } from '../piece-edges.ts';
import { stagesTogether } from '../sewing-stages.ts';
import { bodiceShapedBy } from '../shaped-by.ts';
import { strapSewing } from '../straps/sewing.ts';
import { strapShapes } from '../straps/shapes.ts';
import { strapPiece } from '../straps/strap-piece.ts';
import { strapJoins, strapSeams } from '../straps/strap-seams.ts';
import { type BodicePlan, bodicePieces, planBodice } from './bodice.ts';
import { bodiceGirths, bodiceJoins, bodiceSeams } from './bodice-seams.ts';
import { bodiceChoices } from './choices.ts';
import { bodiceFigures } from './figures.ts';
import { levelTexts } from './level-texts.ts';
import { bodiceRules } from './rules.ts';
import { bodiceSewing } from './sewing.ts';
import { easeLeft } from './take-in.ts';

/** The choices of the bodice with all that fills, holds and finishes it: panels, insert, straps and lining. */
export const fullBodiceChoices = [...bodiceChoices, ...insertChoices, ...liningChoices] as const;

export type FullBodiceStyling = StylingOf<typeof fullBodiceChoices>;

type FullBodiceTable = DraftingTable<typeof fullBodiceChoices>;

/** The place in the front that the insert fills. */
function insertPlace({ measured }: FullBodiceTable, { levels, front, frontLines }: BodicePlan): InsertPlace {
  const { underBust, pivot, strap, strapInner } = front;
  const side = distance(underBust.side, pivot) + distance(pivot, strapInner);
  return {
    neckline: measured('Front neckline, each half', 'from centre front to the strap', strap.inner.x),
    bust: measured('Bust level, each half of the insert', 'from centre front to the princess line', pivot.x),
    underBust: measured('Under-bust seam, each half', 'along the level', underBust.centre.x),
    depth: measured(
      'Insert length at centre front',
      'from the neckline to the under-bust level',
      levels.underBust - strap.inner.y,
    ),
    side: measured('Side of the insert, about', 'along the chords of the princess line', side),
    sideFront: frontLines.sidePrincess.slice(1),
  };
}

/** Plans panels, insert, straps and lining; the plan of the panels is handed on for what is sewn to them. */
export function planFullBodice(
  table: FullBodiceTable,
  setting: BodiceSetting,
): { readonly plan: BodicePlan; readonly cut: Cut } {
  const { body, styling, log } = table;
  const plan = planBodice(table.sketch, body, styling, log);
  const { front, frontLines, back } = plan;
  const fittedStyling = { ...styling, ...easeLeft(styling, plan.widths) };
  const insert = planInsert(table, insertPlace(table, plan));
  const cut: Cut = (solution) => {
    const aboveBust = solvedCurves(solution, frontLines.sidePrincess.slice(2));
    const insertSeam = {
      toBust: edgeLength({ name: 'strap to bust level', curves: aboveBust }),
      allowance: styling.seamAllowance,
      bustText: levelTexts(body, fittedStyling).bust,
    };
    const strap = {
      width: styling.strapWidth,
      back: back.strap.length,
      front: front.strap.length,
      allowance: styling.seamAllowance,
      sleeves: setting.sleeves,
    };
    const panels = bodicePieces(plan, solution, body, fittedStyling, insertRules.flatEnds.value);
    const panelJoins = bodiceJoins(styling);
    const bodice: Parts = {
      pieces: [...panels, insertPiece(insert, solution, styling, insertSeam), strapPiece(strap)].toSorted(
        (a, b) => a.number - b.number,
      ),
      seams: [...insertSeams(insert.fullness.value), ...bodiceSeams, ...strapSeams],
      joins: [...panelJoins, ...strapJoins],
      girths: bodiceGirths(body, fittedStyling),
      notions: drawstringNotions(insert, solution, styling),
      shapes: [
        ...bodiceFigures(plan, solution, body, styling),
        ...insertFigures(insert),
        ...strapShapes(
          { strap: front.strap, slope: front.shoulderSlope },
          { strap: back.strap, slope: back.shoulderSlope },
          styling.strapWidth,
        ),
      ],
      sewing: stagesTogether([insertSewing(insert, styling), bodiceSewing, strapSewing(setting.sleeves)]),
    };
    const armhole = (name: string, flat: number): Armhole => ({ curve: solvedCurve(solution, name), flat });
    const inside = {
      panels,
      armholes: {
        front: armhole(frontLines.armhole, bodiceRules.frontNotch.value),
        back: armhole(plan.backLines.armhole, bodiceRules.backNotch.value),
      },
      setting,
    };
    return finishInside(table, { bodice, panelSeams: bodiceSeams, panelJoins, inside });
  };
  return { plan, cut };
}

/** A bodice without sleeves and skirt: its armholes are finished, its waist is left for what it is joined to. */
const onItsOwn: BodiceSetting = { sleeves: false, skirt: false, opening: 'back' };

/** The bodice on its own, without sleeves. */
export const bodice: Draft<FullBodiceStyling> = {
  name: 'bodice',
  title: 'Princess-seam bodice with a gathered front insert and shoulder straps',
  choices: fullBodiceChoices,
  shapedBy: bodiceShapedBy,
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment({ name: 'bodice', choices: fullBodiceChoices, styling, body, solver }, (table) => {
        const { cut } = planFullBodice(table, onItsOwn);
        return (solution) => ({ ok: true, value: cut(solution), issues: [] });
      }),
    ),
};
