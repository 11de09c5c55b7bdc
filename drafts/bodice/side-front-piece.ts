import { outlineCrossings } from '../../engine/geometry/intersect.ts';
import { between, type Point, point } from '../../engine/geometry/point.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainline } from '../grainline.ts';
import { cutPair, levelLine, seamEdge, solvedPoint } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { bustPointMark, sideFrontTop } from './front-top.ts';
import {
  armholeEdges,
  armholeNotches,
  curvesOf,
  jointNotches,
  type PanelCut,
  sideAtLevel,
  sideNotches,
  strapNotches,
} from './panel-cut.ts';

/** Cuts the side front: strap end or shoulder, armhole, side seam, waist, and the princess edge shaped to the bust. */
export function sideFront(cut: PanelCut): Piece {
  const { plan, allowance } = cut;
  const { foundation, front } = plan;
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
  const edges = [
    ...sideFrontTop(cut),
    ...armholeEdges(cut, 'front', 'side front'),
    seamEdge('side', side, allowance.side, sewingRank.side, 2),
    seamEdge('waist', curvesOf(cut, [front.sideWaist]), allowance.seam, sewingRank.waist, 1),
    princess('princess lower', 0, 1, 1),
    upper,
  ];
  return {
    name: 'side front',
    number: 2,
    edges,
    grain: grainUpright(cut, edges, waist),
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
}

/**
 * The side front's grain: square to the bust level, for its waist may dip towards the princess seam; down the middle of
 * where the panel is narrowest, at the waist or under the bust, to its edge there.
 */
function grainUpright(
  { plan, solution }: PanelCut,
  edges: readonly PieceEdge[],
  waistIn: Point,
): Piece['grain'] {
  const { front, levels } = plan.foundation;
  const underBust = solvedPoint(solution, plan.front.ends.underBust.side);
  const narrowest = point(Math.max(waistIn.x, underBust.x), waistIn.y);
  const top = point(between(narrowest, front.side.waist, 0.5).x, levels.bust.value);
  const down = outlineCrossings(edges, { through: top, heading: { x: 0, y: 1 } });
  const toEdge = Math.min(...down.map(({ along }) => along).filter((along) => along > 0));
  return grainline(top, point(top.x, top.y + toEdge));
}
