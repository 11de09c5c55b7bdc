import { edgeLength } from '../engine/geometry/edge.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import type { StylingOf } from '../engine/pattern/styling.ts';
import { fullBodiceChoices, planFullBodice } from './bodice/draft.ts';
import { drawGarment, type Parts, together } from './draw-garment.ts';
import { withDrawstringAllowed } from './insert/drawstring.ts';
import { openingChoices } from './opening/choices.ts';
import { openDress } from './opening/opening.ts';
import { edgeNamed, pieceNamed } from './piece-edges.ts';
import { stagesTogether } from './sewing-stages.ts';
import { bodiceShapedBy, skirtShapedBy, sleeveShapedBy } from './shaped-by.ts';
import { skirtChoices } from './skirt/choices.ts';
import { drawSkirt } from './skirt/draft.ts';
import type { ByGore, GoreName } from './skirt/gore-sizes.ts';
import { waistSewing } from './skirt/sewing.ts';
import { waistSeams } from './skirt/skirt-seams.ts';
import { sleeveChoices } from './sleeve/choices.ts';
import { planPuffSleeve } from './sleeve/draft.ts';

const dressChoices = [...fullBodiceChoices, ...sleeveChoices, ...skirtChoices, ...openingChoices] as const;

/** The waists the bodice panels came out with: the skirt continues them exactly. */
function panelWaists(panels: readonly Piece[]): ByGore {
  const waist = (name: GoreName): number => edgeLength(edgeNamed(pieceNamed(panels, name), 'waist'));
  return {
    'centre front': waist('centre front'),
    'side front': waist('side front'),
    'side back': waist('side back'),
    'centre back': waist('centre back'),
  };
}

/** The pieces in the order of their numbers. */
const inOrder = (parts: Parts): Parts => ({
  ...parts,
  pieces: parts.pieces.toSorted((a, b) => a.number - b.number),
});

/** The dress: bodice, insert and straps, sleeves set into their armholes, and a skirt that goes on from the waist. */
export const dress: Draft<StylingOf<typeof dressChoices>> = {
  name: 'dress',
  title: 'Fitted dress: princess-seam bodice, gathered front insert, straps, puff sleeves, gored skirt',
  choices: dressChoices,
  shapedBy: [...new Set([...bodiceShapedBy, ...sleeveShapedBy, ...skirtShapedBy])],
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment(
        'dress',
        body,
        (drawn, sketch, log) => {
          const sleeved = styling.sleeve !== 'none';
          const setting = { sleeves: sleeved, skirt: true, opening: styling.opening };
          const bodice = planFullBodice(sketch, drawn, styling, setting, log);
          const sleeves = sleeved ? [planPuffSleeve(sketch, drawn, styling, bodice.plan, log)] : [];
          return (solution) => {
            const above = together(bodice.cut(solution), ...sleeves.map((cut) => cut(solution)));
            const skirt = drawSkirt(drawn, styling, panelWaists(above.pieces), log, solver);
            if (!skirt.ok) return skirt;
            const dress = inOrder(together(above, skirt.value));
            const sewing = stagesTogether([dress.sewing ?? {}, waistSewing(styling)]);
            const joined = { ...dress, seams: [...dress.seams, ...waistSeams], sewing };
            return { ok: true, value: openDress(joined, styling, log), issues: [] };
          };
        },
        solver,
      ),
    ),
};
