import { edgeLength, joinedEdges } from '../../engine/geometry/edge.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { armholeEdges } from '../bodice/panel-marks.ts';
import { cutOnFold, cutPair, edgeNamed, pieceNamed, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { loweredNeckline, sideTop, stretch } from './finished-edges.ts';
import type { Armhole, BodiceInside } from './inside.ts';

/**
 * Cuts a lining panel for each panel of the bodice: the same seams and waist, and the finished edges set back by the
 * turn of the cloth.
 */
export function liningPieces(inside: BodiceInside): readonly Piece[] {
  const { panels, armholes, setting } = inside;
  const panel = (name: string): Piece => pieceNamed(panels, name);
  const waist = (piece: Piece): PieceEdge =>
    setting.skirt ? felled(edgeNamed(piece, 'waist')) : edgeNamed(piece, 'waist');
  return [
    centreFrontLining(panel('centre front'), waist),
    sideLining(panel('side front'), armholes.front, inside, waist),
    centreBackLining(panel('centre back'), inside, waist),
    sideLining(panel('side back'), armholes.back, inside, waist),
  ].map((piece, i) => ({ ...piece, number: 12 + i }));
}

/** An edge that is turned under and sewn by hand, when all else is done. */
export const felled = (edge: PieceEdge): PieceEdge => ({ ...edge, rank: sewingRank.felled });

function centreFrontLining(panel: Piece, waist: (piece: Piece) => PieceEdge): Piece {
  const top = edgeNamed(panel, 'under-bust');
  const underBust = felled({
    ...top,
    ...joinedEdges(top.name, [top, edgeNamed(panel, 'under-bust end')]),
  });
  const princess = edgeNamed(panel, 'princess');
  return {
    ...panel,
    name: liningOf(panel.name),
    edges: [underBust, princess, waist(panel), edgeNamed(panel, 'centre front')],
    notches: panel.notches.filter(({ mark }) => mark === 'fold'),
    cut: cutOnFold('lining'),
  };
}

function sideLining(
  panel: Piece,
  armhole: Armhole,
  { turnOfCloth: turn, setting, allowance }: BodiceInside,
  waist: (piece: Piece) => PieceEdge,
): Piece {
  const strap = edgeNamed(panel, 'strap');
  const side = edgeNamed(panel, 'side');
  const princess = panel.edges.filter(({ name }) => name.startsWith('princess'));
  const [lower, upper = lower] = princess;
  if (!lower || !upper) throw new Error(`The ${panel.name} has no princess edge.`);
  const top = sideTop(panel, upper, armhole.curve, turn);
  const curved = armholeEdges([top.armhole], armhole.flat, allowance.armhole);
  const shortened = stretch(upper, 0, edgeLength(upper) - turn);
  const sewnFlat = upper === lower;
  const edges = [
    felled({ ...strap, curves: straight(top.strapInner, top.strapOuter) }),
    ...(setting.sleeves ? curved.map(felled) : curved),
    stretch(side, turn, edgeLength(side)),
    waist(panel),
    ...(sewnFlat ? [shortened] : [lower, felled(shortened)]),
  ];
  const felledEdges = edges.filter(({ rank }) => rank === sewingRank.felled).map(({ name }) => name);
  return {
    ...panel,
    name: liningOf(panel.name),
    edges,
    notches: panel.notches.flatMap((notch) => {
      if (notch.edge === 'side') return [{ ...notch, at: notch.at - turn }];
      return felledEdges.includes(notch.edge) && notch.at > 0 ? [] : [notch];
    }),
    cut: cutPair('lining'),
  };
}

function centreBackLining(
  panel: Piece,
  { turnOfCloth: turn, setting, allowance }: BodiceInside,
  waist: (piece: Piece) => PieceEdge,
): Piece {
  const princess = edgeNamed(panel, 'princess');
  const centreBack = edgeNamed(panel, 'centre back');
  const centre = stretch(centreBack, 0, edgeLength(centreBack) - turn);
  return {
    ...panel,
    name: liningOf(panel.name),
    edges: [
      { ...edgeNamed(panel, 'neckline'), curves: loweredNeckline(panel, turn) },
      stretch(princess, turn, edgeLength(princess)),
      waist(panel),
      setting.opening === 'side' ? centre : felled({ ...centre, allowance: allowance.seam }),
    ],
    notches: panel.notches.map((notch) =>
      notch.edge === princess.name ? { ...notch, at: notch.at - turn } : notch,
    ),
    cut: cutPair('lining'),
  };
}

/** What the lining of a panel is called. */
export const liningOf = (panel: string): string => `${panel} lining`;
