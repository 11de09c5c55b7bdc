import { edgeLength, edgeOf } from '../../engine/geometry/edge.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainline } from '../grainline.ts';
import { cutOnFold, levelLine, seamEdge, solvedPoint, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { bustLine, bustPointMark, neckAndShoulder, princessNotches, upperPrincess } from './front-top.ts';
import { armholeNotches, curvesOf, type PanelCut } from './panel-cut.ts';
import { sideFront } from './side-front-piece.ts';

/**
 * Cuts the front panels: centre front, its upper part where the under-bust seam parts it, and side front. A gathered
 * insert, whose gathers end `gathersEndAt` mm before the princess seam, takes the place of the upper part.
 */
export function frontPieces(cut: PanelCut, gathersEndAt: number): readonly Piece[] {
  switch (cut.plan.lines.style.front) {
    case 'gathered':
      return [gatheredCentreFront(cut, gathersEndAt), sideFront(cut)];
    case 'parted':
      return [lowerCentreFront(cut), sideFront(cut), upperCentreFront(cut)];
    case 'plain':
      return [wholeCentreFront(cut), sideFront(cut)];
  }
}

const fold = (from: Point, to: Point): PieceEdge => ({
  name: 'centre front',
  curves: straight(from, to),
  turn: 'fold',
  allowance: 0,
  rank: sewingRank.fold,
  inflections: 0,
});

/** What every centre front ends in below: princess edge, waist and fold, up to `foldTop`. */
function belowUnderBust(cut: PanelCut, foldTop: Point): readonly PieceEdge[] {
  const { front } = cut.plan;
  const foldWaist = solvedPoint(cut.solution, front.foldAtWaist);
  return [
    seamEdge(
      'princess',
      curvesOf(cut, [front.centrePrincess.below]),
      cut.allowance.seam,
      sewingRank.princess,
      1,
    ),
    seamEdge('waist', curvesOf(cut, [front.centreWaist]), cut.allowance.seam, sewingRank.waist, 1),
    fold(foldWaist, foldTop),
  ];
}

const waistFold = (cut: PanelCut): Piece['notches'][number] => ({
  name: 'centre front',
  edge: 'waist',
  at: edgeLength(edgeOf('waist', curvesOf(cut, [cut.plan.front.centreWaist]))),
  mark: 'fold',
});

const grainBeside = (cut: PanelCut, top: number, bottom: number): Piece['grain'] => {
  const x = underBustAt(cut).x / 2;
  return grainline(point(x, top), point(x, bottom));
};

/** The centre front below a gathered insert, from the under-bust seam to the waist, on the fold. */
function gatheredCentreFront(cut: PanelCut, gathersEndAt: number): Piece {
  const { front } = cut.plan.foundation;
  const y = front.underBust.centre.y;
  const gatherEnd = point(front.underBust.centre.x - gathersEndAt, y);
  const underBust = (name: string, from: Point, to: Point) =>
    seamEdge(name, straight(from, to), cut.allowance.seam, sewingRank.underBust);
  return {
    name: 'centre front',
    number: 1,
    edges: [
      underBust('under-bust', point(0, y), gatherEnd),
      underBust('under-bust end', gatherEnd, front.underBust.centre),
      ...belowUnderBust(cut, point(0, y)),
    ],
    grain: grainBeside(cut, y, front.waist.centre.y),
    notches: [
      { name: 'centre front', edge: 'under-bust', at: 0, mark: 'fold' },
      { name: 'right end of gathers', edge: 'under-bust end', at: 0, mark: 'gather' },
      { name: 'left end of gathers', edge: 'under-bust end', at: 0, mark: 'gather' },
      waistFold(cut),
    ],
    lines: [],
    marks: [],
    cut: cutOnFold('self'),
  };
}

/** The lower part of a parted centre front. */
function lowerCentreFront(cut: PanelCut): Piece {
  const { front } = cut.plan.foundation;
  const top = point(0, underBustAt(cut).y);
  return {
    name: 'centre front',
    number: 1,
    edges: [
      seamEdge('under-bust', straight(top, underBustAt(cut)), cut.allowance.seam, sewingRank.underBust),
      ...belowUnderBust(cut, top),
    ],
    grain: grainBeside(cut, top.y, front.waist.centre.y),
    notches: [{ name: 'centre front', edge: 'under-bust', at: 0, mark: 'fold' }, waistFold(cut)],
    lines: [],
    marks: [],
    cut: cutOnFold('self'),
  };
}

/** The upper part of a parted centre front, over the bust. */
function upperCentreFront(cut: PanelCut): Piece {
  const { lines } = cut.plan;
  const foot = point(0, underBustAt(cut).y);
  const princess = upperPrincess(cut);
  return {
    name: 'upper centre front',
    number: 3,
    edges: [
      ...neckAndShoulder(cut, 'upper centre front'),
      princess,
      seamEdge('under-bust', straight(underBustAt(cut), foot), cut.allowance.seam, sewingRank.underBust),
      fold(foot, lines.front.centre),
    ],
    grain: grainBeside(cut, lines.front.centre.y, foot.y),
    notches: [
      ...armholeNotches(cut, 'front', 'upper centre front'),
      ...princessNotches(princess),
      { name: 'centre front', edge: 'under-bust', at: underBustAt(cut).x, mark: 'fold' },
    ],
    lines: [bustLine(cut)],
    marks: bustPointMark(cut, 'centre'),
    cut: cutOnFold('self'),
  };
}

/** A plain centre front cut in one, from the neckline to the waist. */
function wholeCentreFront(cut: PanelCut): Piece {
  const { lines, foundation } = cut.plan;
  const princess = upperPrincess(cut);
  const underBust = point(0, underBustAt(cut).y);
  return {
    name: 'centre front',
    number: 1,
    edges: [...neckAndShoulder(cut, 'centre front'), princess, ...belowUnderBust(cut, lines.front.centre)],
    grain: grainBeside(cut, lines.front.centre.y, foundation.front.waist.centre.y),
    notches: [...armholeNotches(cut, 'front', 'centre front'), ...princessNotches(princess), waistFold(cut)],
    lines: [bustLine(cut), levelLine('under-bust', underBust, underBustAt(cut), cut.texts.underBust)],
    marks: bustPointMark(cut, 'centre'),
    cut: cutOnFold('self'),
  };
}

/** The princess line of the centre front at the under-bust level. */
const underBustAt = ({ plan, solution }: PanelCut): Point =>
  solvedPoint(solution, plan.front.ends.underBust.centre);
