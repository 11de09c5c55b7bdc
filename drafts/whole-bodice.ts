import type { Solution } from '../engine/constraints/solution.ts';
import type { Result } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { DraftingTable } from '../engine/pattern/drafting-table.ts';
import type { StylingOf } from '../engine/pattern/styling.ts';
import { bodiceAllowances } from './allowances.ts';
import { strapsBeyondArmhole } from './bodice/armhole-stretches.ts';
import { planBodice } from './bodice/bodice.ts';
import { bodiceChoices } from './bodice/choices.ts';
import { drawStyleLines } from './bodice/necklines.ts';
import type { PanelCut } from './bodice/panel-cut.ts';
import { panelCut, panelParts } from './bodice/panels.ts';
import { bodiceSewing } from './bodice/sewing.ts';
import { chosenStyle, styleClashes } from './bodice/style.ts';
import { drawGarment } from './draw-garment.ts';
import { insideBodice } from './finishing.ts';
import { drawFoundation } from './foundation/draw-foundation.ts';
import { insertChoices } from './insert/choices.ts';
import { withDrawstringAllowed } from './insert/drawstring.ts';
import { planFrontInsert } from './insert/insert.ts';
import { insertRules } from './insert/rules.ts';
import { liningChoices } from './lining/choices.ts';
import { finishInside } from './lining/draft.ts';
import type { BodiceSetting } from './lining/inside.ts';
import { inOrder, type Parts, together } from './parts.ts';
import { bodiceShapedBy } from './shaped-by.ts';
import { stayNotions } from './stays.ts';
import { strapParts } from './straps/straps.ts';

/** The choices of the bodice with all that fills, holds and finishes it: panels, insert, straps and lining. */
export const wholeBodiceChoices = [...bodiceChoices, ...insertChoices, ...liningChoices] as const;

type Table = DraftingTable<typeof wholeBodiceChoices>;

/** A bodice with all that belongs to it, and what is sewn to it is drawn from. */
export interface WholeBodice {
  readonly parts: Parts;
  readonly cut: PanelCut;
}

/** Draws the foundation and the style on it, and asks for every curve; the bodice is then cut from the solved sketch. */
export function planWholeBodice(
  table: Table,
  setting: BodiceSetting,
): (solution: Solution) => Result<WholeBodice> {
  const { body, styling } = table;
  const style = chosenStyle(table);
  const foundation = drawFoundation(table, {
    sleeves: setting.sleeve !== 'none',
    straps: style.shoulder === 'strap',
  });
  const lines = drawStyleLines(table, foundation, style);
  const plan = planBodice(table, foundation, lines, bodiceAllowances(styling));
  const makeInsert = style.front === 'gathered' ? planFrontInsert(table, plan) : undefined;
  return (solution) => {
    const beyond = strapsBeyondArmhole(plan, solution, styling.strapWidth);
    if (beyond.length > 0) return { ok: false, issues: beyond };
    const plain = setting.sleeve === 'plain';
    const cut = panelCut(plan, solution, body, bodiceAllowances(styling), plain);
    const finishing = insideBodice(styling);
    const panels = panelParts(cut, body, plain, insertRules.flatEnds.value);
    const inserted = makeInsert ? [makeInsert(cut, finishing)] : [];
    const straps =
      style.shoulder === 'strap' ? [strapParts(table, cut, setting.sleeve !== 'none', finishing)] : [];
    const unstayed = together(...inserted, panels, ...straps);
    const stays = stayNotions(unstayed.pieces, unstayed.seams);
    const sewing = bodiceSewing(cut, { finishing, tapes: stays.map(({ name }) => name) });
    const bodice = together(...inserted, { ...panels, notions: stays, sewing }, ...straps);
    const parts = finishInside(table, { bodice: inOrder(bodice), cut, setting });
    return { ok: true, value: { cut, parts }, issues: [] };
  };
}

/** A bodice without sleeves and skirt: its armholes are finished, its waist is left for what it is joined to. */
const onItsOwn: BodiceSetting = { sleeve: 'none', skirt: false, opening: 'back' };

/** The bodice on its own, without sleeves. */
export const bodice: Draft<StylingOf<typeof wholeBodiceChoices>> = {
  name: 'bodice',
  title: 'Princess-seam bodice: with straps or whole shoulders, its front gathered or plain',
  choices: wholeBodiceChoices,
  shapedBy: bodiceShapedBy,
  clashes: styleClashes,
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment(
        {
          name: 'bodice',
          choices: wholeBodiceChoices,
          styling,
          body,
          solver,
          open: ['waist', 'centre back'],
        },
        (table) => {
          const make = planWholeBodice(table, onItsOwn);
          return (solution) => {
            const made = make(solution);
            return made.ok ? { ok: true, value: inOrder(made.value.parts), issues: [] } : made;
          };
        },
      ),
    ),
};
