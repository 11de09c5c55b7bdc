import { edgeLength } from '../engine/geometry/edge.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { DraftingTable } from '../engine/pattern/drafting-table.ts';
import type { Mm } from '../engine/pattern/quantity.ts';
import type { StylingOf } from '../engine/pattern/styling.ts';
import { styleClashes } from './bodice/style.ts';
import { drawGarment } from './draw-garment.ts';
import { withDrawstringAllowed } from './insert/drawstring.ts';
import { openingChoices } from './opening/choices.ts';
import { openDress } from './opening/opening.ts';
import { inOrder, together } from './parts.ts';
import { edgeNamed, pieceNamed } from './piece-edges.ts';
import { stagesTogether } from './sewing-stages.ts';
import { bodiceShapedBy, skirtShapedBy, sleeveShapedBy } from './shaped-by.ts';
import { type ByGore, byGore } from './skirt/by-gore.ts';
import { skirtChoices } from './skirt/choices.ts';
import { drawSkirt } from './skirt/draft.ts';
import { waistSewing } from './skirt/sewing.ts';
import { waistJoin, waistSeams } from './skirt/skirt-seams.ts';
import { sleeveChoices } from './sleeve/choices.ts';
import { drawSleeve } from './sleeve/sleeve.ts';
import { planWholeBodice, type WholeBodice, wholeBodiceChoices } from './whole-bodice.ts';

const dressChoices = [...wholeBodiceChoices, ...sleeveChoices, ...skirtChoices, ...openingChoices] as const;

type DressTable = DraftingTable<typeof dressChoices>;

/** The waists the bodice panels came out with: the skirt continues them exactly. */
function panelWaists({ heading, measured, dimension }: DressTable, { cut, parts }: WholeBodice): ByGore<Mm> {
  heading('The waist of the skirt');
  const { halfWaist } = cut.plan.foundation.widths;
  return byGore((name) => {
    const waist = measured(
      `Waist of the ${name} gore`,
      `as the ${name} panel came out`,
      edgeLength(edgeNamed(pieceNamed(parts.pieces, name), 'waist')),
      halfWaist,
    );
    dimension(name.endsWith('front') ? 'front' : 'back', waist, `${name} waist`);
    return waist;
  });
}

/** The dress: bodice, insert and straps, sleeves set into their armholes, and a skirt that goes on from the waist. */
export const dress: Draft<StylingOf<typeof dressChoices>> = {
  name: 'dress',
  title: 'Fitted dress: princess-seam bodice, gathered or plain in front, sleeves, gored skirt',
  choices: dressChoices,
  shapedBy: [...new Set([...bodiceShapedBy, ...sleeveShapedBy, ...skirtShapedBy])],
  clashes: styleClashes,
  draw: (body, styling, solver) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment({ name: 'dress', choices: dressChoices, styling, body, solver }, (table) => {
        const { sleeve, opening } = styling;
        const makeBodice = planWholeBodice(table, { sleeve, skirt: true, opening });
        return (solution) => {
          const made = makeBodice(solution);
          if (!made.ok) return made;
          const bodice = made.value;
          const sleeves = drawSleeve(table, bodice.cut, solver);
          if (sleeves && !sleeves.ok) return sleeves;
          const above = together(bodice.parts, ...(sleeves ? [sleeves.value] : []));
          const skirt = drawSkirt(table, panelWaists(table, bodice), solver);
          if (!skirt.ok) return skirt;
          const dress = inOrder(together(above, skirt.value));
          const sewing = stagesTogether([dress.sewing ?? {}, waistSewing(styling)]);
          const joined = {
            ...dress,
            seams: [...dress.seams, ...waistSeams],
            joins: [...dress.joins, waistJoin],
            sewing,
          };
          return { ok: true, value: openDress(table, joined), issues: [] };
        };
      }),
    ),
};
