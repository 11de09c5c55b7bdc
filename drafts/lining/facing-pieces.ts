import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { withEndsMoved } from '../../engine/geometry/ends-moved.ts';
import { between, moved, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { armholeEdges } from '../bodice/panel-marks.ts';
import { grainline, grainThrough } from '../grainline.ts';
import { cutPair, edgeNamed, pieceNamed, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { loweredNeckline, sideTop, stretch } from './finished-edges.ts';
import type { Armhole, BodiceInside } from './inside.ts';
import { felled } from './lining-pieces.ts';
import { liningRules as rules } from './rules.ts';

/** Cuts the facings: of the back neckline, and of the armholes where no sleeve finishes them. */
export function facingPieces(inside: BodiceInside): readonly Piece[] {
  const { panels, armholes, setting } = inside;
  const panel = (name: string): Piece => pieceNamed(panels, name);
  const pieces = [
    neckFacing(panel('centre back'), inside),
    ...(setting.sleeves
      ? []
      : [
          armholeFacing('front armhole facing', panel('side front'), armholes.front, inside),
          armholeFacing('back armhole facing', panel('side back'), armholes.back, inside),
        ]),
  ];
  return pieces.map((piece, i) => ({ ...piece, number: 12 + i }));
}

/** The top of the centre back; the lower edge is the neckline once more. */
function neckFacing(
  panel: Piece,
  { turnOfCloth: turn, setting, allowance, facingEdge }: BodiceInside,
): Omit<Piece, 'number'> {
  const neatened = neatenedBy(facingEdge);
  const depth = turn + rules.neckFacing.value;
  const neckline = { ...edgeNamed(panel, 'neckline'), curves: loweredNeckline(panel, turn) };
  const centreBack = edgeNamed(panel, 'centre back');
  const length = edgeLength(centreBack);
  const centre = stretch(centreBack, length - depth, length - turn);
  const princess = stretch(edgeNamed(panel, 'princess'), turn, depth);
  const lower = loweredNeckline(panel, depth).map(reversed).toReversed();
  return {
    name: 'back neck facing',
    edges: [
      neckline,
      neatened(princess),
      neatened({ ...neckline, name: 'lower', curves: lower }),
      setting.opening === 'side'
        ? centre
        : { ...felled({ ...centre, allowance: allowance.seam }), turn: 'finished' },
    ],
    grain: grainline(
      between(edgeEnd(centre), edgeStart(princess), 0.2),
      between(edgeStart(centre), edgeEnd(princess), 0.2),
    ),
    notches: [],
    lines: [],
    marks: [],
    cut: [...cutPair('self'), ...cutPair('interfacing')],
  };
}

/** A band along the armhole, as wide as the strap at its top; its inner edge is the armhole once more. */
function armholeFacing(
  name: string,
  panel: Piece,
  armhole: Armhole,
  { turnOfCloth: turn, allowance, facingEdge }: BodiceInside,
): Omit<Piece, 'number'> {
  const strap = edgeNamed(panel, 'strap');
  const princess = panel.edges.findLast((edge) => edge.name.startsWith('princess')) ?? strap;
  const top = sideTop(panel, princess, armhole.curve, turn);
  const side = stretch(edgeNamed(panel, 'side'), turn, turn + rules.armholeFacing.value);
  const across = vectorBetween(top.strapOuter, top.strapInner);
  const inner = reversed(withEndsMoved(top.armhole, across, vectorBetween(edgeStart(side), edgeEnd(side))));
  const [upper, underarm] = armholeEdges([top.armhole], armhole.flat, allowance.armhole);
  const edges = [
    felled({ ...strap, curves: straight(top.strapInner, top.strapOuter) }),
    upper,
    underarm,
    side,
    neatenedBy(facingEdge)({ ...upper, name: 'inner', curves: [inner] }),
  ];
  const depth = rules.armholeFacing.value;
  const inward = scaled(outward(unit(vectorBetween(edgeStart(side), edgeEnd(side)))), -depth / 3);
  const beside = moved(between(edgeStart(side), edgeEnd(side), 0.5), inward);
  return {
    name,
    edges,
    grain: grainThrough(edges, beside, unit(vectorBetween(panel.grain.from, panel.grain.to))),
    notches: panel.notches.filter(({ edge }) => edge === underarm.name),
    lines: [],
    marks: [],
    cut: [...cutPair('self'), ...cutPair('interfacing')],
  };
}

/** A free edge, turned under and stitched. */
const neatenedBy =
  (allowance: number) =>
  (edge: PieceEdge): PieceEdge => ({
    ...edge,
    rank: sewingRank.facingEdge,
    turn: 'finished',
    allowance,
  });
