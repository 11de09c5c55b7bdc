import type { Piece } from '../../engine/pattern/piece.ts';
import type { Join, Seam } from '../../engine/pattern/seam.ts';
import { edge, plainSeam } from '../seams.ts';
import { type FacedEdges, facedArmholes, facedNecklines } from './faced-edges.ts';
import { facingOf, innerEdgeOf } from './facing-pieces.ts';
import type { Finished } from './finished-runs.ts';
import type { Unfinished } from './inside.ts';
import { atCentreBack, fell, toBodice } from './lining-seams.ts';
import { panelsOf } from './panels.ts';

/** How the facings are sewn: to each other, and to the edges that they face. */
export function facingSeams(pieces: readonly Piece[], { cut, setting }: Unfinished): readonly Seam[] {
  const { style } = cut.plan.lines;
  const sewn = toBodice(pieces);
  const faces =
    (finished: Finished) =>
    ({ name, part, edges }: FacedEdges): Seam => {
      const names = [...new Set(edges.map((ref) => ref.edge))];
      const facing = facingOf(part, finished);
      return sewn(
        `facing, ${name}`,
        names.map((each) => edge(facing, each)),
        edges,
      );
    };
  const toEachOther = (name: string, finished: Finished, at: string): Seam =>
    plainSeam(name, [edge(facingOf('front', finished), at)], [edge(facingOf('back', finished), at)]);
  const onStrap = (part: 'front' | 'back'): Seam => {
    const panel = edge(`side ${part}`, 'strap');
    return fell(sewn(`facing, ${part} strap`, [edge(facingOf(part, 'armhole'), 'strap')], [panel]));
  };
  const whole = style.shoulder === 'whole';
  return [
    ...(setting.opening === 'side' ? [atCentreBack('facing, centre back', facingOf('back', 'neck'))] : []),
    ...(whole ? [toEachOther('facing, shoulder at the neck', 'neck', 'shoulder')] : []),
    ...facedNecklines(panelsOf(pieces)).map(faces('neck')),
    ...(setting.sleeve === 'none'
      ? [
          toEachOther('facing, side', 'armhole', 'side'),
          ...(whole ? [toEachOther('facing, shoulder at the armhole', 'armhole', 'shoulder')] : []),
          ...facedArmholes(cut.armholes).map(faces('armhole')),
          ...(whole ? [] : [onStrap('front'), onStrap('back')]),
        ]
      : []),
  ];
}

/** Where the facings' lines must run on: the finished edge as the panels' does, and the inner edge beside it. */
export function facingJoins(facings: readonly Piece[], bodice: readonly Join[]): readonly Join[] {
  const called = (finished: Finished, part: 'front' | 'back') =>
    facings.find(({ name }) => name === facingOf(part, finished));
  return [
    ...(['neck', 'armhole'] as const).flatMap((finished) => {
      const [front, back] = [called(finished, 'front'), called(finished, 'back')];
      return front && back ? [...over('shoulder', front, back), ...over('side', front, back)] : [];
    }),
    ...facings.flatMap((facing) => [...atNotch(facing), ...atCorner(facing), ...atCentre(facing, bodice)]),
  ];
}

/** Over the seam between two facings, on both sides of the band. */
function over(seam: string, front: Piece, back: Piece): readonly Join[] {
  const corners = ({ name: piece, edges }: Piece) => {
    const at = edges.findIndex(({ name }) => name === seam);
    return [edges.at(at - 1), edges[(at + 1) % edges.length]].flatMap((each) =>
      at >= 0 && each ? [{ piece, edge: each.name, seam }] : [],
    );
  };
  const others = corners(back);
  return corners(front).flatMap((a, i) => {
    const b = others[i];
    return b ? [{ kind: 'across', name: `${front.name}, ${a.edge} at the ${seam} seam`, a, b }] : [];
  });
}

const atNotch = ({ name: piece, edges }: Piece): readonly Join[] =>
  ['upper', 'underarm'].every((part) => edges.some(({ name }) => name === `armhole ${part}`))
    ? [{ kind: 'along', name: `${piece} at its notch`, piece, from: 'armhole upper', to: 'armhole underarm' }]
    : [];

/** At the corner of a neckline that has one. */
const atCorner = ({ name: piece, edges }: Piece): readonly Join[] =>
  ['neckline', 'neckline side'].every((part) => edges.some(({ name }) => name === part))
    ? [
        {
          kind: 'along',
          name: `${piece} at its corner`,
          turns: true,
          piece,
          from: 'neckline',
          to: 'neckline side',
        },
      ]
    : [];

/** At the centre, where the panel's neckline runs on or has a point. */
const atCentre = ({ name: piece, edges }: Piece, bodice: readonly Join[]): readonly Join[] =>
  bodice.flatMap((join) => {
    if (join.kind !== 'mirror' || join.a.edge !== 'neckline') return [];
    const { seam } = join.a;
    return edges.some(({ name }) => name === seam)
      ? ['neckline', innerEdgeOf.neck].map(
          (each): Join => ({
            kind: 'mirror',
            name: `${piece}, ${each} at the ${seam}`,
            ...(join.turns && { turns: join.turns }),
            a: { piece, edge: each, seam },
          }),
        )
      : [];
  });
