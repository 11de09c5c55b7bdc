import type { Body } from '../../engine/body/body.ts';
import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import type { ConstructionLog } from '../../engine/pattern/construction-log.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { type Cut, drawGarment } from '../draw-garment.ts';
import { insertChoices } from '../insert/choices.ts';
import { drawstringNotions, withDrawstringAllowed } from '../insert/drawstring.ts';
import { insertFigures } from '../insert/figures.ts';
import { planInsert } from '../insert/insert-lines.ts';
import { insertPiece } from '../insert/insert-piece.ts';
import { insertSeams } from '../insert/insert-seams.ts';
import { insertRules } from '../insert/rules.ts';
import { insertSewing } from '../insert/sewing.ts';
import { solvedCurves } from '../piece-edges.ts';
import { stagesTogether } from '../sewing-stages.ts';
import { strapSewing } from '../straps/sewing.ts';
import { strapPiece } from '../straps/strap-piece.ts';
import { strapJoins, strapSeams } from '../straps/strap-seams.ts';
import {
  type BodicePlan,
  bodiceGirths,
  bodiceJoins,
  bodicePieces,
  bodiceSeams,
  planBodice,
} from './bodice.ts';
import { bodiceChoices } from './choices.ts';
import { bodiceFigures } from './figures.ts';
import { levelTexts } from './level-texts.ts';
import { bodiceSewing } from './sewing.ts';
import { easeLeft } from './take-in.ts';

/** The choices of the bodice with all that fills and holds it: panels, insert and straps. */
export const fullBodiceChoices = [...bodiceChoices, ...insertChoices] as const;

export type FullBodiceStyling = StylingOf<typeof fullBodiceChoices>;

/** Plans panels, insert and straps; the plan of the panels is handed on for what is sewn to them. */
export function planFullBodice(
  sketch: SketchBuilder,
  body: Body,
  styling: FullBodiceStyling,
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
    };
    const strap = {
      width: styling.strapWidth,
      back: back.strap.length,
      front: front.strap.length,
      allowance: styling.seamAllowance,
    };
    return {
      pieces: [
        ...bodicePieces(plan, solution, body, fittedStyling, insertRules.flatEnds.value),
        insertPiece(insert, solution, styling, insertSeam),
        strapPiece(strap),
      ].toSorted((a, b) => a.number - b.number),
      seams: [...insertSeams(insert.fullness), ...bodiceSeams, ...strapSeams],
      joins: [...bodiceJoins, ...strapJoins],
      girths: bodiceGirths(body, fittedStyling),
      notions: drawstringNotions(insert, solution, styling),
      figures: [...bodiceFigures(plan, solution, body, styling), ...insertFigures(insert)],
      sewing: stagesTogether([insertSewing(insert, styling), bodiceSewing, strapSewing]),
    };
  };
  return { plan, cut };
}

/** The bodice on its own, without sleeves. */
export const bodice: Draft<FullBodiceStyling> = {
  name: 'bodice',
  title: 'Princess-seam bodice with a gathered front insert and shoulder straps',
  choices: fullBodiceChoices,
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment(
        'bodice',
        body,
        (drawn, sketch, log) => {
          const { cut } = planFullBodice(sketch, drawn, styling, log);
          return (solution) => ({ ok: true, value: cut(solution), issues: [] });
        },
        solver,
      ),
    ),
};
