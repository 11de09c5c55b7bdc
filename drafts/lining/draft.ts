import type { Parts } from '../draw-garment.ts';
import { stagesTogether } from '../sewing-stages.ts';
import type { LiningTable } from './choices.ts';
import { facingPieces } from './facing-pieces.ts';
import { facingJoins, facingSeams } from './facing-seams.ts';
import type { BodiceInside } from './inside.ts';
import { liningPieces } from './lining-pieces.ts';
import { liningGirths, liningJoins, liningSeams } from './lining-seams.ts';
import { liningRules as rules } from './rules.ts';
import { insideSewing } from './sewing.ts';

/** A bodice, its panels' own seams and joins, and what lining or facings are drawn from. */
export interface Unlined {
  readonly bodice: Parts;
  readonly panelSeams: Parts['seams'];
  readonly panelJoins: Parts['joins'];
  readonly inside: Omit<BodiceInside, 'turnOfCloth'>;
}

/** Adds what finishes a bodice inside: a lining of its panels, or facings. The insert faces itself. */
export function finishInside(table: LiningTable, unlined: Unlined): Parts {
  const { styling } = table;
  const { bodice } = unlined;
  table.heading(styling.inside === 'lined' ? 'The lining' : 'The facings');
  const made = styling.inside === 'lined' ? lining(table, unlined) : facings(table, unlined);
  return {
    ...bodice,
    pieces: [...bodice.pieces, ...made.pieces],
    seams: [...bodice.seams, ...made.seams],
    joins: [...bodice.joins, ...made.joins],
    girths: [...bodice.girths, ...made.girths],
    sewing: stagesTogether([
      bodice.sewing ?? {},
      insideSewing({
        kind: styling.inside === 'lined' ? 'lining' : 'facing',
        pieces: made.pieces,
        seams: made.seams,
        setting: unlined.inside.setting,
        turnOfCloth: styling.turnOfCloth,
      }),
    ]),
  };
}

type Made = Pick<Parts, 'pieces' | 'seams' | 'joins' | 'girths'>;

function lining(
  { styling, choice, say }: LiningTable,
  { bodice, panelSeams, panelJoins, inside }: Unlined,
): Made {
  say`Lining: the panels once more, set back by ${choice.turnOfCloth} mm at neckline, armholes, straps and centre back, so that the seams roll inside; the insert is its own lining [turn of cloth, common practice, no source]`;
  const pieces = liningPieces({ ...inside, turnOfCloth: styling.turnOfCloth });
  return {
    pieces,
    seams: liningSeams([...bodice.pieces, ...pieces], panelSeams, inside.setting),
    joins: liningJoins(panelJoins),
    girths: liningGirths(bodice.girths),
  };
}

function facings({ styling, choice, say }: LiningTable, { bodice, inside }: Unlined): Made {
  say`Back neck facing: the top of the centre back, ${rules.neckFacing} mm deep, set back by ${choice.turnOfCloth} mm`;
  if (!inside.setting.sleeves)
    say`Armhole facings: bands along the armholes, ${rules.armholeFacing} mm deep at the side, set back by ${choice.turnOfCloth} mm`;
  const pieces = facingPieces({ ...inside, turnOfCloth: styling.turnOfCloth });
  return {
    pieces,
    seams: facingSeams([...bodice.pieces, ...pieces], inside.setting),
    joins: facingJoins(inside.setting),
    girths: [],
  };
}
