import type { Solution } from '../../engine/constraints/solution.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { bodiceAllowances } from '../allowances.ts';
import { grainline } from '../grainline.ts';
import { cutOnFold, seamEdge, solvedCurve, solvedCurves, solvedPoint, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { BodiceStyling } from './choices.ts';
import type { FrontFoundation } from './front-foundation.ts';
import type { FrontLines } from './front-lines.ts';
import type { LevelTexts } from './level-texts.ts';
import type { Levels } from './levels.ts';
import { jointNotches } from './panel-marks.ts';
import { bodiceRules as rules } from './rules.ts';
import { sidePanelPiece } from './side-panel.ts';

/**
 * Cuts the centre front panel, from the under-bust seam to the waist, on the fold. The insert's gathers end
 * `gathersEndAt` mm before the princess seam.
 */
export function centreFrontPiece(
  front: FrontFoundation,
  lines: FrontLines,
  solution: Solution,
  levels: Levels,
  styling: BodiceStyling,
  gathersEndAt: number,
): Piece {
  const { seam: allowance } = bodiceAllowances(styling);
  const foldTop = point(0, levels.underBust);
  const foldWaist = solvedPoint(solution, 'centre front fold at waist');
  const middle = front.underBust.centre.x / 2;
  const gatherEnd = point(front.underBust.centre.x - gathersEndAt, levels.underBust);
  return {
    name: 'centre front',
    number: 1,
    edges: [
      seamEdge('under-bust', straight(foldTop, gatherEnd), allowance, sewingRank.underBust),
      seamEdge(
        'under-bust end',
        straight(gatherEnd, front.underBust.centre),
        allowance,
        sewingRank.underBust,
      ),
      seamEdge('princess', solvedCurves(solution, [lines.centrePrincess]), allowance, sewingRank.princess, 1),
      seamEdge('waist', solvedCurves(solution, [lines.centreWaist]), allowance, sewingRank.waist, 1),
      {
        name: 'centre front',
        curves: straight(foldWaist, foldTop),
        turn: 'fold',
        allowance: 0,
        rank: sewingRank.fold,
        inflections: 0,
      },
    ],
    grain: grainline(point(middle, foldTop.y), point(middle, foldWaist.y)),
    notches: [
      { name: 'centre front', edge: 'under-bust', at: 0, mark: 'fold' },
      { name: 'right end of gathers', edge: 'under-bust end', at: 0, mark: 'gather' },
      { name: 'left end of gathers', edge: 'under-bust end', at: 0, mark: 'gather' },
      {
        name: 'centre front',
        edge: 'waist',
        at: edgeLength({ name: 'waist', curves: solvedCurves(solution, [lines.centreWaist]) }),
        mark: 'fold',
      },
    ],
    lines: [],
    marks: [],
    cut: cutOnFold('self'),
  };
}

/** Cuts the side front panel: strap end, armhole, side seam, waist, and the princess edge shaped to the bust. */
export function sideFrontPiece(
  front: FrontFoundation,
  lines: FrontLines,
  solution: Solution,
  levels: Levels,
  styling: BodiceStyling,
  texts: LevelTexts,
): Piece {
  const allowance = bodiceAllowances(styling);
  const princess = (name: string, from: number, to: number, inflections: number) =>
    seamEdge(
      name,
      solvedCurves(solution, lines.sidePrincess.slice(from, to)),
      allowance.seam,
      sewingRank.princess,
      inflections,
    );
  const upperPrincess = princess('princess upper', 1, 3, 1);
  return sidePanelPiece(
    {
      name: 'side front',
      number: 2,
      strap: { inner: front.strapInner, outer: front.strapOuter },
      armhole: solvedCurve(solution, lines.armhole),
      armholeFlat: rules.frontNotch.value,
      armholeNotch: { name: 'front armhole notch', mark: 'single' },
      side: solvedCurve(solution, lines.side),
      underarm: front.underarm,
      sideWaist: front.sideWaist,
      waist: solvedCurve(solution, lines.sideWaist),
      princess: [princess('princess lower', 0, 1, 1), upperPrincess],
      princessNotches: [
        { name: 'under-bust seam', edge: upperPrincess.name, at: 0, mark: 'single' },
        ...jointNotches(upperPrincess, [{ name: 'bust level', mark: 'single' }]),
      ],
      princessAt: {
        waist: solvedPoint(solution, 'side front waist'),
        bust: front.pivot,
        underBust: front.underBust.side,
      },
      bustPointInside: -styling.princessOffset,
      allowance,
    },
    levels,
    texts,
  );
}
