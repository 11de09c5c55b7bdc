import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { point } from '../../engine/geometry/point.ts';
import { movedBy, transformedCurve } from '../../engine/geometry/transform.ts';
import { vector } from '../../engine/geometry/vector.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { gatheringRows } from '../gathering-rows.ts';
import { grainline } from '../grainline.ts';
import { cutPair, levelLine, seamEdge, solvedCurves, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { SleeveStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';
import type { SleeveLines } from './sleeve-lines.ts';

/** Cuts the puff sleeve: the fitted cap below the notches moved apart, the spread crown between, a straight hem. */
export function sleevePiece(
  lines: SleeveLines,
  solution: Solution,
  styling: SleeveStyling,
  allowance: BodiceAllowances,
  shoulder: number,
  texts: { readonly arm: string; readonly elastic: string },
): Piece {
  const spread = solution.scalars[lines.spread] ?? 0;
  const half = (lines.fitted + spread) / 2;
  const apart = (names: readonly string[], x: number): readonly Curve[] =>
    solvedCurves(solution, names).map((curve) => transformedCurve(curve, movedBy(vector(x, 0))));
  const cap = (name: string, curves: readonly Curve[], inflections: number) =>
    seamEdge(name, curves, allowance.armhole, sewingRank.armhole, inflections);
  const backFlat = cap('cap back underarm', apart([lines.backFlat], -spread / 2), 1);
  const frontFlat = cap('cap front underarm', apart([lines.frontFlat], spread / 2), 1);
  const crown = cap('crown', solvedCurves(solution, lines.crown), 2);
  const hem = lines.length;
  const top = crown.curves[0]?.to ?? point(0, 0);
  const casing = styling.elasticWidth + rules.casingRoom.value;
  const least = casing + rules.turnUnder.value;
  const chosen = styling.sleeveHemAllowance === 'auto' ? least : styling.sleeveHemAllowance;
  return {
    name: 'sleeve',
    number: 7,
    edges: [
      backFlat,
      crown,
      frontFlat,
      seamEdge(
        'front seam',
        straight(point(half, 0), point(half, hem)),
        allowance.seam,
        sewingRank.sleeveSeam,
      ),
      {
        name: 'hem',
        curves: straight(point(half, hem), point(-half, hem)),
        turn: 'hem',
        allowance: Math.max(chosen, least),
        rank: sewingRank.hem,
        inflections: 0,
      },
      seamEdge(
        'back seam',
        straight(point(-half, hem), point(-half, 0)),
        allowance.seam,
        sewingRank.sleeveSeam,
      ),
    ],
    grain: grainline(top, point(top.x, hem)),
    notches: [
      { name: 'back armhole notch', edge: backFlat.name, at: edgeLength(backFlat), mark: 'double' },
      { name: 'front armhole notch', edge: frontFlat.name, at: 0, mark: 'single' },
      { name: 'shoulder', edge: 'crown', at: shoulder * styling.sleeveFullness, mark: 'level' },
    ],
    lines: [
      ...gatheringRows('crown', crown.curves),
      { ...levelLine('upper arm level', point(-half, 0), point(half, 0), texts.arm), fullness: spread },
      {
        name: 'casing',
        kind: 'casing',
        text: texts.elastic,
        curves: straight(point(-half, hem - casing), point(half, hem - casing)),
      },
    ],
    marks: [],
    cut: cutPair('self'),
  };
}
