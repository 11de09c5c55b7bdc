import type { Draft } from '../engine/pattern/draft.ts';
import type { StylingOf } from '../engine/pattern/styling.ts';
import { fullBodiceChoices, planFullBodice } from './bodice/draft.ts';
import { drawGarment, together } from './draw-garment.ts';
import { withDrawstringAllowed } from './insert/drawstring.ts';
import { sleeveChoices } from './sleeve/choices.ts';
import { planPuffSleeve } from './sleeve/draft.ts';

const dressChoices = [...fullBodiceChoices, ...sleeveChoices] as const;

/** The dress: bodice, insert and straps, with the sleeves set into their armholes. */
export const dress: Draft<StylingOf<typeof dressChoices>> = {
  name: 'dress',
  title: 'Fitted dress: princess-seam bodice, gathered front insert, straps, puff sleeves',
  choices: dressChoices,
  draw: (body, styling) =>
    withDrawstringAllowed(body, styling, () =>
      drawGarment('dress', body, (drawn, sketch, log) => {
        const bodice = planFullBodice(sketch, drawn, styling, log);
        const sleeve = planPuffSleeve(sketch, drawn, styling, bodice.plan, log);
        return (solution) => together(bodice.cut(solution), sleeve(solution));
      }),
    ),
};
