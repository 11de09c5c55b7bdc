import type { Garment } from '../../pattern/garment.ts';
import { cutWords } from '../label-words.ts';
import { type Html, html } from './html.ts';
import { capital, quantity } from './words.ts';

/** The pieces to cut, of each cloth. */
export const cutList = ({ pieces }: Garment): Html =>
  html(
    'table',
    { class: 'list' },
    pieces.map((piece) =>
      html(
        'tr',
        {},
        html('td', { class: 'key' }, String(piece.number)),
        html('td', {}, capital(piece.name)),
        html('td', {}, piece.cut.map(cutWords).join('; ')),
      ),
    ),
  );

/** What is needed beside the cloth: the garment's notions with their lengths, and what every garment takes. */
export const notionList = ({ notions }: Garment): Html =>
  html(
    'table',
    { class: 'list' },
    notions.map((notion) =>
      html(
        'tr',
        {},
        html('td', {}, capital(notion.name)),
        html('td', { class: 'figure' }, quantity(notion)),
        html('td', {}, notion.note),
      ),
    ),
    everyGarment.map(([name, note]) =>
      html('tr', {}, html('td', {}, name), html('td', {}), html('td', {}, note)),
    ),
  );

const everyGarment = [
  ['Thread', 'matching, and a bright one for tacking and gathering rows'],
  ['Tools', 'pins, chalk, tape, shears or rotary cutter, bodkin, iron and a cloth to press through'],
] as const;

/** Edges with a seam allowance that no seam of this garment sews: they wait for what is made apart. */
export function openEdges({ pieces, seams, sewing = [] }: Garment): readonly string[] {
  const stitched = [
    ...seams.flatMap(({ a, b }) => [...a, ...b]),
    ...sewing.flatMap(({ turns = [], catches = [] }) => [...turns, ...catches]),
  ];
  const sewn = new Set(stitched.map(({ piece, edge }) => `${piece}\n${edge}`));
  return pieces.flatMap(({ name, edges }) => {
    const open = edges.filter((edge) => edge.turn === 'seam' && !sewn.has(`${name}\n${edge.name}`));
    return open.length > 0 ? [`${name}: ${open.map((edge) => edge.name).join(', ')}`] : [];
  });
}
