import type { Draft } from '../../engine/pattern/draft.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { cutArmholes } from '../bodice/armhole-stretches.ts';
import { backPieces } from '../bodice/back-pieces.ts';
import { planBodice } from '../bodice/bodice.ts';
import { bodiceGirths, bodiceJoins, bodiceSeams } from '../bodice/bodice-seams.ts';
import { levelTexts } from '../bodice/ease-left.ts';
import { frontPieces } from '../bodice/front-pieces.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import { bodiceRules } from '../bodice/rules.ts';
import { bodiceSewing } from '../bodice/sewing.ts';
import { bodiceShapes } from '../bodice/shapes.ts';
import { drawGarment, inOrder, type Parts, together } from '../draw-garment.ts';
import { insideBodice } from '../finishing.ts';
import { drawFoundation } from '../foundation/foundation.ts';
import { sleeveShapedBy, trialShapedBy } from '../shaped-by.ts';
import { drawPlainSleeve } from '../sleeve/plain-sleeve.ts';
import { trialChoices } from './choices.ts';
import { markedForFitting } from './marks.ts';
import { drawNeckBase } from './neck-base.ts';
import { trialRules as rules } from './rules.ts';

/** One wide allowance all round: a trial bodice is let out where it strains. */
const width = rules.allowance.value;
const allowance = { seam: width, side: width, centreBack: width, armhole: width, neckline: width };

/** The trial bodice: the foundation in princess panels, to be sewn in cheap cloth, tried on and written on. */
export const trial: Draft<StylingOf<typeof trialChoices>> = {
  name: 'trial',
  title: 'Trial bodice: the foundation in princess panels, to be tried on before any cloth is cut',
  choices: trialChoices,
  shapedBy: [...new Set([...trialShapedBy, ...sleeveShapedBy])],
  draw: (body, styling, solver) =>
    drawGarment({ name: 'trial', choices: trialChoices, styling, body, solver }, (table) => {
      const foundation = drawFoundation(table, true);
      const lines = drawNeckBase(table, foundation);
      const plan = planBodice(table, foundation, lines, width);
      const sleeved = styling.sleeve === 'plain';
      return (solution) => {
        const notch = sleeved ? bodiceRules.plainNotch : bodiceRules.puffNotch;
        const cut: PanelCut = {
          plan,
          solution,
          armholes: cutArmholes(plan, solution, notch.value),
          allowance,
          texts: levelTexts(body, foundation),
        };
        const bodice: Parts = {
          pieces: markedForFitting([...frontPieces(cut, 0), ...backPieces(cut)], cut),
          seams: bodiceSeams(cut),
          joins: bodiceJoins(cut),
          girths: bodiceGirths(table.body, foundation, lines.style),
          notions: [],
          shapes: bodiceShapes(cut, table.body, sleeved),
          sewing: bodiceSewing(cut, { finishing: insideBodice({}), tapes: [] }),
        };
        if (!sleeved) return { ok: true, value: inOrder(bodice), issues: [] };
        const sleeve = drawPlainSleeve(table, cut, solver);
        return sleeve.ok ? { ok: true, value: inOrder(together(bodice, sleeve.value)), issues: [] } : sleeve;
      };
    }),
};
