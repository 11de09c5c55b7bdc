import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf } from '../../engine/geometry/edge.ts';
import { between, type Point, point } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import type { Mark, Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainline } from '../grainline.ts';
import { crossMark, cutOnFold, cutPair, levelLine, seamEdge, solvedPoint, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { easedLine } from './eased-line.ts';
import { hasNoCorner } from './front-neckline.ts';
import {
  armholeEdges,
  armholeNotches,
  curvesOf,
  jointNotches,
  type PanelCut,
  panelTop,
  sideAtLevel,
  sideNotches,
  strapNotches,
} from './panel-cut.ts';

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

const bustLine = ({ plan, texts }: PanelCut): Piece['lines'][number] =>
  levelLine('bust', point(0, plan.foundation.levels.bust.value), plan.foundation.front.pivot, texts.bust);

/** The side front's grain: square to the bust level, for its waist may dip towards the princess seam. */
const grainUpright = ({ plan }: PanelCut, waistIn: Point, waistOut: Point): Piece['grain'] => {
  const { x, y } = between(waistIn, waistOut, 0.5);
  return grainline(point(x, plan.foundation.levels.bust.value), point(x, y));
};

/** The princess line of the centre front at the under-bust level. */
const underBustAt = ({ plan, solution }: PanelCut): Point =>
  solvedPoint(solution, plan.front.ends.underBust.centre);

/** The match points of the princess edge over the bust, drawn down from its top. */
const princessNotches = (princess: PieceEdge): readonly Notch[] => [
  ...jointNotches(princess, [{ name: 'bust level', mark: 'single' }]),
  { name: 'under-bust seam', edge: princess.name, at: edgeLength(princess), mark: 'single' },
];

/** The bust point, on the panel it lies on: `beyond` the princess line (mm), less than nothing towards the centre. */
const bustPointMark = ({ plan }: PanelCut, panel: 'centre' | 'side'): readonly Mark[] => {
  const { bustPoint, pivot } = plan.foundation.front;
  const beyond = bustPoint.value - pivot.x;
  return (panel === 'side') === beyond > 0 ? [crossMark('bust point', point(bustPoint.value, pivot.y))] : [];
};

const upperPrincess = (cut: PanelCut): PieceEdge =>
  seamEdge(
    'princess upper',
    curvesOf(cut, cut.plan.front.centrePrincess.overBust ?? []),
    cut.allowance.seam,
    sewingRank.princess,
    2,
  );

/** The top of a plain centre front: neckline, and where they are its own, the neckline's side, shoulder and armhole. */
function neckAndShoulder(cut: PanelCut, piece: string): readonly PieceEdge[] {
  const { lines, necklines } = cut.plan;
  const { style, front } = lines;
  const { allowance } = cut;
  const across = seamEdge(
    'neckline',
    curvesOf(cut, necklines.front ? [necklines.front] : []),
    allowance.neckline,
    sewingRank.neckline,
    2,
  );
  if (style.princess.front === 'neckline') return [across];
  const end = style.princess.front === 'shoulder' ? front.princess.centre : armholeTop(cut, 'front');
  const shoulder = seamEdge(
    'shoulder',
    straight(front.atCentre.inner, end),
    allowance.seam,
    sewingRank.shoulder,
  );
  const side = hasNoCorner(style)
    ? []
    : [neckSide(cut, front.atCentre.inner, front.corner, front.atCentre.square)];
  return [across, ...side, shoulder, ...armholeEdges(cut, 'front', piece)];
}

/** Where the armhole meets the shoulder on a centre panel that reaches it. */
const armholeTop = ({ armholes }: PanelCut, part: 'front' | 'back'): Point =>
  armholes[part].edges[0]?.curves[0]?.from ?? point(0, 0);

/** The side of a neckline, from its corner up to the shoulder, which it meets with a heading (radians). */
const neckSide = ({ allowance }: PanelCut, shoulder: Point, corner: Point, leaving: number): PieceEdge =>
  seamEdge(
    'neckline side',
    [reversed(easedLine(shoulder, corner, leaving))],
    allowance.neckline,
    sewingRank.neckline,
    1,
  );

/** Cuts the side front: strap end or shoulder, armhole, side seam, waist, and the princess edge shaped to the bust. */
function sideFront(cut: PanelCut): Piece {
  const { plan, allowance } = cut;
  const { foundation, lines, front } = plan;
  const princess = (name: string, from: number, to: number, inflections: number): PieceEdge =>
    seamEdge(
      name,
      curvesOf(cut, front.sidePrincess.slice(from, to)),
      allowance.seam,
      sewingRank.princess,
      inflections,
    );
  const upper = princess('princess upper', 1, 3, 2);
  const side = curvesOf(cut, front.side);
  const waist = solvedPoint(cut.solution, front.ends.waist.side);
  const { levels } = foundation;
  return {
    name: 'side front',
    number: 2,
    edges: [
      ...sideFrontTop(cut),
      ...armholeEdges(cut, 'front', 'side front'),
      seamEdge('side', side, allowance.side, sewingRank.side, 2),
      seamEdge('waist', curvesOf(cut, [front.sideWaist]), allowance.seam, sewingRank.waist, 1),
      princess('princess lower', 0, 1, 1),
      upper,
    ],
    grain: grainUpright(cut, waist, foundation.front.side.waist),
    notches: [
      { name: 'under-bust seam', edge: upper.name, at: 0, mark: 'single' },
      ...jointNotches(upper, [{ name: 'bust level', mark: 'single' }]),
      ...armholeNotches(cut, 'front', 'side front'),
      ...strapNotches(cut, 'front'),
      ...sideNotches(cut, side),
    ],
    lines: [
      levelLine('bust', foundation.front.pivot, sideAtLevel(side, levels.bust.value).point, cut.texts.bust),
      levelLine(
        'under-bust',
        solvedPoint(cut.solution, front.ends.underBust.side),
        sideAtLevel(side, levels.underBust.value).point,
        cut.texts.underBust,
      ),
    ],
    marks: bustPointMark(cut, 'side'),
    cut: cutPair('self'),
  };

  function sideFrontTop(of: PanelCut): readonly PieceEdge[] {
    const { style, front: half } = lines;
    const seam = (name: string, curves: readonly Curve[]): PieceEdge =>
      seamEdge(name, curves, allowance.seam, sewingRank.strap);
    if (style.princess.front === 'armhole') return [];
    if (style.shoulder === 'strap') return [seam('strap', straight(half.sideCorner, panelTop(of, 'front')))];
    if (style.princess.front === 'shoulder')
      return [seam('shoulder', straight(half.princess.side, half.outer))];
    return [
      neckSide(of, half.inner, half.sideCorner, half.neckHeading),
      seam('shoulder', straight(half.inner, half.outer)),
    ];
  }
}
