import { edgeLength } from '../../engine/geometry/edge.ts';
import type { EdgeRef, Garment, Girth, Join, Seam } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import type { BodiceSetting } from './inside.ts';
import { liningOf } from './lining-pieces.ts';

type Ends = readonly [piece: string, ...edges: string[]];

/** Sews inside pieces to the bodice: what they are shorter or longer by is the turn of the cloth, held in. */
export function toBodice(pieces: readonly Piece[]): (name: string, inside: Ends, bodice: Ends) => Seam {
  const length = (refs: readonly EdgeRef[]): number =>
    refs.reduce((sum, ref) => sum + edgeLength(edgeNamed(pieceNamed(pieces, ref.piece), ref.edge)), 0);
  return (name, inside, bodice) => {
    const [a, b] = [refsOf(inside), refsOf(bodice)];
    return { name, a, b, ease: length(a) - length(b), gatherRatio: 1 };
  };
}

const refsOf = ([piece, ...edges]: Ends): readonly EdgeRef[] => edges.map((edge) => ({ piece, edge }));

/** Sewn by hand, when the seams it covers are done. */
export const fell = (seam: Seam): Seam => ({ ...seam, felled: true });

/** The left and the right of a piece, sewn to each other along its centre back. */
export const atCentreBack = (name: string, piece: string): Seam => ({
  name,
  a: [{ piece, edge: 'centre back' }],
  b: [{ piece, edge: 'centre back' }],
  ease: 0,
  gatherRatio: 1,
});

/** How the lining is sewn: to itself as the panels are, and to the bodice round all its edges. */
export function liningSeams(
  pieces: readonly Piece[],
  ownSeams: readonly Seam[],
  { sleeves, skirt, opening }: BodiceSetting,
): readonly Seam[] {
  const sewn = toBodice(pieces);
  const like = (name: string, panel: string, ...edges: readonly [string, ...string[]]): Seam =>
    sewn(name, [liningOf(panel), ...edges], [panel, ...edges]);
  const armhole = (name: string, panel: string, edge: string): Seam => {
    const seam = like(name, panel, edge);
    return sleeves ? fell(seam) : seam;
  };
  return [
    ...ownSeams.map(lined),
    opening === 'side'
      ? atCentreBack('lining, centre back', liningOf('centre back'))
      : fell(like('lining, centre back', 'centre back', 'centre back')),
    like('lining, neckline', 'centre back', 'neckline'),
    armhole('lining, front armhole', 'side front', 'armhole upper'),
    armhole('lining, front underarm', 'side front', 'armhole underarm'),
    armhole('lining, back armhole', 'side back', 'armhole upper'),
    armhole('lining, back underarm', 'side back', 'armhole underarm'),
    fell(like('lining, front strap', 'side front', 'strap')),
    fell(like('lining, back strap', 'side back', 'strap')),
    fell(
      sewn(
        'lining, under-bust',
        [liningOf('centre front'), 'under-bust'],
        ['centre front', 'under-bust', 'under-bust end'],
      ),
    ),
    fell(like('lining, front princess upper', 'side front', 'princess upper')),
    skirt ? fell(waistSeam) : waistSeam,
  ];
}

const waistSeam: Seam = {
  name: 'lining, waist',
  a: waistOf(liningOf),
  b: waistOf((panel) => panel),
  ease: 0,
  gatherRatio: 1,
};

/** The waist from centre front to centre back. */
function waistOf(named: (panel: string) => string): readonly EdgeRef[] {
  return [
    { piece: named('centre front'), edge: 'waist', reversed: true },
    { piece: named('side front'), edge: 'waist', reversed: true },
    { piece: named('side back'), edge: 'waist' },
    { piece: named('centre back'), edge: 'waist' },
  ];
}

/** The same between the linings of the panels. */
export const lined = (seam: Seam): Seam => ({
  ...seam,
  name: `lining, ${seam.name}`,
  a: seam.a.map((ref) => ({ ...ref, piece: liningOf(ref.piece) })),
  b: seam.b.map((ref) => ({ ...ref, piece: liningOf(ref.piece) })),
});

/** Where the lining's lines must run on: wherever the panels' do. */
export const liningJoins = (joins: readonly Join[]): readonly Join[] =>
  joins.map((join): Join => {
    const name = `lining, ${join.name}`;
    const at = <C extends { readonly piece: string }>(corner: C): C => ({
      ...corner,
      piece: liningOf(corner.piece),
    });
    if (join.kind === 'along') return { ...at(join), name };
    if (join.kind === 'mirror') return { ...join, name, a: at(join.a) };
    return { ...join, name, a: at(join.a), b: at(join.b) };
  });

/** The lining closes where it is whole: under the bust and at the waist. */
export const liningGirths = (girths: Garment['girths']): readonly Girth[] =>
  girths
    .filter(({ level }) => level === 'under-bust' || level === 'waist')
    .map((girth) => ({
      ...girth,
      level: `${girth.level}, lining`,
      parts: girth.parts.flatMap((part) =>
        part.kind === 'edge' && part.edge === 'under-bust end'
          ? []
          : [{ ...part, piece: liningOf(part.piece) }],
      ),
    }));
