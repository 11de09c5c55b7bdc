import type { Parts } from '../draw-garment.ts';
import { exposed } from '../finishing.ts';
import { stagesTogether } from '../sewing-stages.ts';
import type { LiningTable } from './choices.ts';
import type { Inside, Unfinished } from './inside.ts';
import { liningPiece } from './lining-pieces.ts';
import { liningGirths, liningJoins, liningSeams } from './lining-seams.ts';
import { panelsOf } from './panels.ts';
import { insideSewing } from './sewing.ts';

/** Lining and facings are listed after what they finish. */
const FIRST_NUMBER = 20;

/** Adds what finishes a bodice inside: a lining of its panels, or facings. Insert and straps face themselves. */
export function finishInside(table: LiningTable, unfinished: Unfinished): Parts {
  const { bodice, cut, setting } = unfinished;
  const { inside, turnOfCloth, facingAllowance } = table.styling;
  const made =
    inside === 'lined' ? lining(table, unfinished) : { pieces: [], seams: [], joins: [], girths: [] };
  const pieces = made.pieces.map((piece, i) => ({ ...piece, number: FIRST_NUMBER + i }));
  return {
    ...bodice,
    pieces: [...bodice.pieces, ...pieces],
    seams: [...bodice.seams, ...made.seams],
    joins: [...bodice.joins, ...made.joins],
    girths: [...bodice.girths, ...made.girths],
    sewing: stagesTogether([
      bodice.sewing ?? {},
      insideSewing({
        kind: inside === 'lined' ? 'lining' : 'facing',
        pieces,
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

function lining(table: LiningTable, unfinished: Unfinished): Inside {
  const { bodice, cut, setting } = unfinished;
  table.heading('Lining');
  table.say`Lining: the panels once more, set back by ${table.choice.turnOfCloth} at necklines, armholes and strap ends, so that the seams roll inside; insert and straps face themselves`;
  const panels = panelsOf(bodice.pieces);
  const lined = new Set(panels.map(({ name }) => name));
  const panelSeams = bodice.seams.filter(({ a, b }) => [...a, ...b].every(({ piece }) => lined.has(piece)));
  const pieces = panels.map((panel) =>
    liningPiece(panel, {
      setting,
      panelSeams,
      turnOfCloth: table.styling.turnOfCloth,
      allowance: cut.allowance.seam,
    }),
  );
  return {
    pieces,
    seams: liningSeams([...bodice.pieces, ...pieces], panelSeams, unfinished),
    joins: liningJoins(bodice.joins.filter((join) => cornersOf(join).every(({ piece }) => lined.has(piece)))),
    girths: liningGirths(bodice.girths, lined),
  };
}

/** The corners, or edges, of the pieces that a join is about. */
const cornersOf = (join: Parts['joins'][number]): readonly { readonly piece: string }[] =>
  join.kind === 'across' ? [join.a, join.b] : [join.kind === 'mirror' ? join.a : join];
