import type { Body } from '../../engine/body/body.ts';
import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import type { ConstructionLog } from '../../engine/pattern/construction-log.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { bodiceAllowances } from '../allowances.ts';
import { type Cut, drawGarment, type Parts } from '../draw-garment.ts';
import { insideBodice } from '../finishing.ts';
import { insertChoices } from '../insert/choices.ts';
import { drawstringNotions, withDrawstringAllowed } from '../insert/drawstring.ts';
import { insertFigures } from '../insert/figures.ts';
import { planInsert } from '../insert/insert-lines.ts';
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
import { stayNotions } from '../stays.ts';
import { strapSewing } from '../straps/sewing.ts';
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

/** Plans panels, insert, straps and lining; the plan of the panels is handed on for what is sewn to them. */
export function planFullBodice(
  sketch: SketchBuilder,
  body: Body,
  styling: FullBodiceStyling,
  setting: BodiceSetting,
  log: ConstructionLog,
): { readonly plan: BodicePlan; readonly cut: Cut } {
  const plan = planBodice(sketch, body, styling, log);
  const { front, frontLines, back, levels } = plan;
  const fittedStyling = { ...styling, ...easeLeft(styling, plan.widths) };
  const insert = planInsert(sketch, body, styling, levels, front, frontLines, log);
  const cut: Cut = (solution) => {
    const aboveBust = solvedCurves(solution, frontLines.sidePrincess.slice(2));
    const insertSeam = {
      toBust: edgeLength({ name: 'strap to bust level', curves: aboveBust }),
      allowance: styling.seamAllowance,
      bustText: levelTexts(body, fittedStyling).bust,
      bustPointInside: styling.princessOffset,
    };
    const strap = {
      width: styling.strapWidth,
      back: back.strap.length,
      front: front.strap.length,
      allowance: bodiceAllowances(styling),
      sleeves: setting.sleeves,
    };
    const panels = bodicePieces(plan, solution, body, fittedStyling, insertRules.flatEnds.value);
    const panelJoins = bodiceJoins(styling);
    const finishing = insideBodice(styling);
    const bodice: Parts = {
      pieces: [...panels, insertPiece(insert, solution, styling, insertSeam), strapPiece(strap)].toSorted(
        (a, b) => a.number - b.number,
      ),
      seams: [...insertSeams(insert.fullness), ...bodiceSeams, ...strapSeams],
      joins: [...panelJoins, ...strapJoins],
      girths: bodiceGirths(body, fittedStyling),
      notions: [
        ...drawstringNotions(insert, solution, styling),
        ...stayNotions(panels, strap.back + strap.front),
      ],
      figures: [...bodiceFigures(plan, solution, body, styling), ...insertFigures(insert)],
      sewing: stagesTogether([
        insertSewing(insert, styling, finishing),
        bodiceSewing(finishing),
        strapSewing(setting.sleeves, setting.sleeves ? finishing.together : 'enclosed'),
      ]),
    };
    const armhole = (name: string, flat: number): Armhole => ({ curve: solvedCurve(solution, name), flat });
    const inside = {
      panels,
      armholes: {
        front: armhole(frontLines.armhole, bodiceRules.frontNotch.value),
        back: armhole(plan.backLines.armhole, bodiceRules.backNotch.value),
      },
      setting,
      allowance: bodiceAllowances(styling),
    };
    return finishInside({ bodice, panelSeams: bodiceSeams, panelJoins, inside }, styling, log);
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
      drawGarment(
        'bodice',
        body,
        (drawn, sketch, log) => {
          const { cut } = planFullBodice(sketch, drawn, styling, onItsOwn, log);
          return (solution) => ({ ok: true, value: cut(solution), issues: [] });
        },
        solver,
      ),
    ),
};
