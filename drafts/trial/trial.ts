import type { Draft } from '../../engine/pattern/draft.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { planBodice } from '../bodice/bodice.ts';
import { panelCut, panelParts } from '../bodice/panels.ts';
import { drawGarment } from '../draw-garment.ts';
import { drawFoundation } from '../foundation/draw-foundation.ts';
import { inOrder, type Parts, together } from '../parts.ts';
import { sleeveShapedBy, trialShapedBy } from '../shaped-by.ts';
import { drawPlainSleeve } from '../sleeve/plain-sleeve.ts';
import { trialChoices } from './choices.ts';
import { markedForFitting } from './marks.ts';
import { drawNeckBase } from './neck-base.ts';
import { trialRules as rules } from './rules.ts';
import { trialSewing } from './sewing.ts';

/** One wide allowance all round: a trial bodice is let out where it strains. */
const width = rules.allowance.value;
const allowance = { seam: width, side: width, centreBack: width, armhole: width, neckline: width };

/** It is tried on raw: nothing finishes these edges, and the back is pinned shut. */
const open = ['neckline', 'armhole', 'armhole upper', 'armhole underarm', 'waist', 'centre back'];

/** The trial bodice: the foundation in princess panels, to be sewn in cheap cloth, tried on and written on. */
export const trial: Draft<StylingOf<typeof trialChoices>> = {
  name: 'trial',
  title: 'Trial bodice: the foundation in princess panels, to be tried on before any cloth is cut',
  choices: trialChoices,
  shapedBy: [...new Set([...trialShapedBy, ...sleeveShapedBy])],
  draw: (body, styling, solver) =>
    drawGarment({ name: 'trial', choices: trialChoices, styling, body, solver, open }, (table) => {
      const foundation = drawFoundation(table, { sleeves: true, straps: false });
      const lines = drawNeckBase(table, foundation);
      const plan = planBodice(table, foundation, lines, allowance);
      const sleeved = styling.sleeve === 'plain';
      return (solution) => {
        const cut = panelCut(plan, solution, table.body, allowance, sleeved);
        const panels = panelParts(cut, table.body, sleeved, 0);
        const bodice: Parts = {
          ...panels,
          pieces: markedForFitting(panels.pieces, cut),
          sewing: trialSewing(cut),
        };
        if (!sleeved) return { ok: true, value: inOrder(bodice), issues: [] };
        const sleeve = drawPlainSleeve(table, cut, solver);
        return sleeve.ok ? { ok: true, value: inOrder(together(bodice, sleeve.value)), issues: [] } : sleeve;
      };
    }),
};
