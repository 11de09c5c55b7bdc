import type { Join } from '../../engine/pattern/garment.ts';
import type { LiningTable } from './choices.ts';
import type { Inside, Unfinished } from './inside.ts';
import { isFinished, liningPiece } from './lining-pieces.ts';
import { liningGirths, liningJoins, liningSeams } from './lining-seams.ts';
import { panelsOf, partOf } from './panels.ts';

/** Draws a lining for every panel of a bodice, and says how it is sewn in. */
export function drawLining(table: LiningTable, unfinished: Unfinished): Inside {
  const { bodice, cut, setting } = unfinished;
  const panels = panelsOf(bodice.pieces);
  const lined = new Set(panels.map(({ name }) => name));
  const areLined = (parts: readonly { readonly piece: string }[]): boolean =>
    parts.every(({ piece }) => lined.has(piece));
  const panelSeams = bodice.seams.filter(({ a, b }) => areLined([...a, ...b]));
  const { turnOfCloth } = table.styling;
  const pieces = panels.map((panel) =>
    liningPiece(panel, { setting, panelSeams, turnOfCloth, allowance: cut.allowance.seam }),
  );
  table.heading('The lining');
  table.say`Lining: the panels once more, set back by ${table.choice.turnOfCloth} at necklines, armholes and strap ends, so that the seams roll inside; insert and straps face themselves [turn of cloth, common practice, no source]`;
  for (const { name, edges } of pieces)
    for (const edge of edges.filter(isFinished))
      table.line(partOf(name), `${name}, ${edge.name}`, edge.curves);
  return {
    pieces,
    seams: liningSeams([...bodice.pieces, ...pieces], panelSeams, unfinished),
    joins: liningJoins(bodice.joins.filter((join) => areLined(cornersOf(join)))),
    girths: liningGirths(bodice.girths.filter(({ parts }) => areLined(parts))),
  };
}

/** The places on pieces that a join is about. */
const cornersOf = (join: Join): readonly { readonly piece: string }[] =>
  join.kind === 'across' ? [join.a, join.b] : [join.kind === 'mirror' ? join.a : join];
