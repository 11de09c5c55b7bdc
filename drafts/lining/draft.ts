import { exposed } from '../finishing.ts';
import type { Parts } from '../parts.ts';
import { stagesTogether } from '../sewing-stages.ts';
import type { LiningTable } from './choices.ts';
import { drawFacings } from './facings.ts';
import type { Unfinished } from './inside.ts';
import { drawLining } from './lining.ts';
import { insideSewing } from './sewing.ts';

/** Lining and facings are listed after what they finish. */
const FIRST_NUMBER = 20;

/** Adds what finishes a bodice inside: a lining of its panels, or facings. Insert and straps face themselves. */
export function finishInside(table: LiningTable, unfinished: Unfinished): Parts {
  const { bodice, cut, setting } = unfinished;
  const { inside, turnOfCloth, facingAllowance } = table.styling;
  const made = inside === 'lined' ? drawLining(table, unfinished) : drawFacings(table, unfinished);
  return {
    ...bodice,
    pieces: [...bodice.pieces, ...made.pieces.map((piece, i) => ({ ...piece, number: FIRST_NUMBER + i }))],
    seams: [...bodice.seams, ...made.seams],
    joins: [...bodice.joins, ...made.joins],
    girths: [...bodice.girths, ...made.girths],
    sewing: stagesTogether([
      bodice.sewing ?? {},
      insideSewing({
        kind: inside === 'lined' ? 'lining' : 'facings',
        pieces: made.pieces,
        seams: made.seams,
        style: cut.plan.lines.style,
        setting,
        turnOfCloth,
        facingEdge: facingAllowance,
        exposed: exposed(table.styling),
      }),
    ]),
  };
}
