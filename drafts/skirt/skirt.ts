import type { Draft } from '../../engine/pattern/draft.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Girth } from '../../engine/pattern/seam.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { drawGarment } from '../draw-garment.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import { makingChoices, waistEase } from '../making-choices.ts';
import { inOrder } from '../parts.ts';
import { skirtShapedBy } from '../shaped-by.ts';
import { acrossGores, halves } from './across-gores.ts';
import { type ByGore, goreNames } from './by-gore.ts';
import { skirtChoices } from './choices.ts';
import { drawSkirt } from './draft.ts';
import { skirtRules as rules } from './rules.ts';
import { sayTakenIn, takenFromGores, takenIn } from './taken-in.ts';

const choices = [waistEase, ...skirtChoices, ...makingChoices] as const;

/** A waist of the skirt's own, shared among its gores, and the ease (mm) that a fitting left of it. */
interface OwnWaist {
  readonly gores: ByGore<Mm>;
  readonly ease: number;
}

function ownWaist(table: DraftingTable<typeof choices>): OwnWaist {
  const { size, choice, mm } = table;
  table.heading('The waist of the skirt');
  const half = mm`Half waist: (waist girth ${size.waistGirth} + ease ${choice.waistEase}) / 2`;
  const front = mm`Waist of the front half: (half waist ${half} + ${rules.sideBalance}) / 2`;
  const back = mm`Waist of the back half: (half waist ${half} - ${rules.sideBalance}) / 2`;
  const gores = {
    'centre front': mm`Waist of the centre front gore: ${rules.centreGoreWaist} of ${front}; half of the gore`,
    'side front': mm`Waist of the side front gore: (1 - ${rules.centreGoreWaist}) of ${front}`,
    'side back': mm`Waist of the side back gore: (1 - ${rules.centreGoreWaist}) of ${back}`,
    'centre back': mm`Waist of the centre back gore: ${rules.centreGoreWaist} of ${back}; half of the gore`,
  };
  const taken = takenFromGores(table, 'waist');
  const finished = mm`Finished waist: 2 x half waist ${half}`;
  const left = sayTakenIn(table, 'waist', finished, size.waistGirth, taken);
  table.laidOut(left, 2, () => acrossGores('waist'));
  if (!taken) {
    table.laidOut(half, 1, () => acrossGores('waist'));
    table.laidOut(front, 1, () => acrossGores('waist', halves.front));
    table.laidOut(back, 1, () => acrossGores('waist', halves.back));
  }
  return {
    gores: takenIn(table, 'waist', gores, taken),
    ease: choice.waistEase.value - (taken?.girth.value ?? 0),
  };
}

/** The gored skirt on its own. */
export const skirt: Draft<StylingOf<typeof choices>> = {
  name: 'skirt',
  title: 'Gored skirt',
  choices,
  shapedBy: skirtShapedBy,
  draw: (body, styling, solver) =>
    drawGarment(
      { name: 'skirt', choices, styling, body, solver, open: ['waist', 'centre back'] },
      (table) => () => {
        const waist = ownWaist(table);
        const drawn = drawSkirt(table, waist.gores, solver);
        if (!drawn.ok) return drawn;
        const waistOf = (level: string, named: (gore: string) => string): Girth => ({
          level,
          body: table.body.size.waistGirth,
          ease: waist.ease,
          parts: goreNames.map((name) => ({
            kind: 'edge',
            piece: named(`skirt ${name}`),
            edge: 'waist',
            times: 2,
          })),
        });
        const waists = [
          waistOf('waist', (gore) => gore),
          ...(styling.skirtLining === 'none' ? [] : [waistOf('waist, lining', liningOf)]),
        ];
        const { value, issues } = drawn;
        return { ok: true, value: inOrder({ ...value, girths: [...waists, ...value.girths] }), issues };
      },
    ),
};
