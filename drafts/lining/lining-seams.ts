import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef, Girth, Join, Seam } from '../../engine/pattern/seam.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import { backwards, easedSeam, edge, plainSeam } from '../seams.ts';
import { type FacedEdges, facedArmholes, facedNecklines } from './faced-edges.ts';
import type { Unfinished } from './inside.ts';
import { liningOf } from './lining-pieces.ts';
import { panelsOf } from './panels.ts';

/** Sews inside pieces to the bodice: what they are shorter or longer by is the turn of the cloth, held in. */
export function toBodice(
  pieces: readonly Piece[],
): (name: string, inside: readonly EdgeRef[], bodice: readonly EdgeRef[]) => Seam {
  const length = (refs: readonly EdgeRef[]): number =>
    refs.reduce((sum, ref) => sum + edgeLength(edgeNamed(pieceNamed(pieces, ref.piece), ref.edge)), 0);
  return (name, a, b) => easedSeam(name, a, b, length(a) - length(b));
}

/** Sewn by hand, when the seams it covers are done. */
export const fell = (seam: Seam): Seam => ({ ...seam, felled: true });

/** The left and the right of a piece, sewn to each other along its centre back. */
export const atCentreBack = (name: string, piece: string): Seam =>
  plainSeam(name, [edge(piece, 'centre back')], [edge(piece, 'centre back')]);

/** How the lining is sewn: to itself as the panels are, and to the bodice round all its edges. */
export function liningSeams(
  pieces: readonly Piece[],
  panelSeams: readonly Seam[],
  { cut, setting }: Unfinished,
): readonly Seam[] {
  const { style } = cut.plan.lines;
  const { sleeve, skirt, opening } = setting;
  const sewn = toBodice(pieces);
  const like = ({ name, edges }: Pick<FacedEdges, 'name' | 'edges'>): Seam =>
    sewn(`lining, ${name}`, edges.map(inLining), edges);
  const one = (name: string, piece: string, edge: string): Seam => like({ name, edges: [{ piece, edge }] });
  const underArm = sleeve === 'none' ? like : (edges: FacedEdges): Seam => fell(like(edges));
  return [
    ...panelSeams.map(lined),
    opening === 'side'
      ? atCentreBack('lining, centre back', liningOf('centre back'))
      : fell(one('centre back', 'centre back', 'centre back')),
    ...facedNecklines(panelsOf(pieces)).map(like),
    ...facedArmholes(cut.armholes).map(underArm),
    ...(style.shoulder === 'strap'
      ? [fell(one('front strap', 'side front', 'strap')), fell(one('back strap', 'side back', 'strap'))]
      : []),
    ...(style.front === 'gathered' ? overInsert(sewn) : []),
    skirt ? fell(waistSeam) : waistSeam,
  ];
}

/** The lining covers the seams of the insert. */
function overInsert(sewn: ReturnType<typeof toBodice>): readonly Seam[] {
  const underBust = edge('centre front', 'under-bust');
  const princess = edge('side front', 'princess upper');
  return [
    fell(
      sewn('lining, under-bust', [inLining(underBust)], [underBust, edge('centre front', 'under-bust end')]),
    ),
    fell(sewn('lining, front princess upper', [inLining(princess)], [princess])),
  ];
}

/** The same edge of the lining, or the same corner. */
const inLining = <P extends { readonly piece: string }>(part: P): P => ({
  ...part,
  piece: liningOf(part.piece),
});

/** The waist from centre front to centre back. */
const waist: readonly EdgeRef[] = [
  backwards('centre front', 'waist'),
  backwards('side front', 'waist'),
  edge('side back', 'waist'),
  edge('centre back', 'waist'),
];

const waistSeam = plainSeam('lining, waist', waist.map(inLining), waist);

/** The same between the linings of the panels. */
export const lined = (seam: Seam): Seam => ({
  ...seam,
  name: `lining, ${seam.name}`,
  a: seam.a.map(inLining),
  b: seam.b.map(inLining),
});

/** Where the lining's lines must run on: wherever the panels' do. */
export const liningJoins = (joins: readonly Join[]): readonly Join[] =>
  joins.map((join): Join => {
    const name = `lining, ${join.name}`;
    if (join.kind === 'along') return { ...inLining(join), name };
    if (join.kind === 'mirror') return { ...join, name, a: inLining(join.a) };
    return { ...join, name, a: inLining(join.a), b: inLining(join.b) };
  });

/** The lining closes to the girths of the panels. */
export const liningGirths = (girths: readonly Girth[]): readonly Girth[] =>
  girths.map((girth) => ({
    ...girth,
    level: `${girth.level}, lining`,
    parts: girth.parts.flatMap((part) =>
      part.kind === 'edge' && part.edge === 'under-bust end' ? [] : [inLining(part)],
    ),
  }));
