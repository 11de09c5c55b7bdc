import type { Curve } from '../../engine/geometry/curve.ts';
import { outlineCrossings } from '../../engine/geometry/intersect.ts';
import { between, moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { transformedCurve, turnedBy } from '../../engine/geometry/transform.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { edgesOn } from '../bodice/armhole-parts.ts';
import { easedLine } from '../bodice/eased-line.ts';
import { armholeNotches, type PanelCut, panelTop, strapNotches } from '../bodice/panel-cut.ts';
import { grainThrough } from '../grainline.ts';
import { seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';

/** Cuts the straps: the part before the shoulder and the part behind it. */
export const strapPieces = (cut: PanelCut, sleeves: boolean): readonly Piece[] =>
  (['front', 'back'] as const).map((part) => strapPiece(cut, part, sleeves));

/**
 * Cuts one part of a strap off the panel below it, as it lies there with the dart closed, and turns it upright. Laid
 * together at the shoulder, both parts have the neckline and the armhole for their edges, so each edge is as long as
 * its way over the shoulder. It is cut twice for each side, the inner layer facing the outer.
 */
function strapPiece(cut: PanelCut, part: 'front' | 'back', sleeves: boolean): Piece {
  const { allowance, plan } = cut;
  const half = plan.lines[part];
  const name = `${part} strap`;
  const upright = turnedBy(half.sideCorner, -half.turned);
  const placed = (curves: readonly Curve[]): readonly Curve[] =>
    curves.map((curve) => transformedCurve(curve, upright));
  const inner = easedLine(half.inner, half.sideCorner, half.neckHeading);
  const edge = (
    edgeName: string,
    curves: readonly Curve[],
    width: number,
    rank: number,
    inflections = 0,
  ): PieceEdge => seamEdge(edgeName, placed(curves), width, rank, inflections);
  const edges = [
    edge('shoulder', straight(half.inner, half.outer), allowance.seam, sewingRank.strapShoulder),
    ...edgesOn(cut.armholes[part], name).map(({ edge: outer, curves }) =>
      edge(outer, curves, allowance.armhole, sleeves ? sewingRank.armhole : sewingRank.strapTube, 2),
    ),
    edge(`${part} end`, straight(panelTop(cut, part), half.sideCorner), allowance.seam, sewingRank.strap),
    edge('inner', [reversed(inner)], allowance.neckline, sewingRank.strapTube, 1),
  ];
  const shoulder = upright(between(half.inner, half.outer, 1 / 2));
  const foot = upright(between(half.sideCorner, panelTop(cut, part), 1 / 2));
  return {
    name,
    number: part === 'front' ? 6 : 6.5,
    edges,
    grain: grainFrom(edges, shoulder, foot),
    notches: [...armholeNotches(cut, part, name), ...strapNotches(cut, part, `${part} end`)],
    lines: [],
    marks: [],
    cut: [
      { cloth: 'self', count: 2, onFold: false, pair: true },
      { cloth: 'lining', count: 2, onFold: false, pair: true },
    ],
  };
}

/** How far across a strap its grainline runs, from the inner edge: there it leaves room for the label. */
const GRAIN_AT = 0.2;

/** The grainline of a strap, along the way from the middle of its shoulder to that of its end, however it is curved. */
function grainFrom(edges: readonly PieceEdge[], shoulder: Point, foot: Point): Piece['grain'] {
  const down = unit(vectorBetween(shoulder, foot));
  const middle = between(shoulder, foot, 1 / 2);
  const across = outlineCrossings(edges, { through: middle, heading: outward(down) }).map(
    ({ along }) => along,
  );
  const inner = Math.min(...across);
  const at = inner + GRAIN_AT * (Math.max(...across) - inner);
  return grainThrough(edges, moved(middle, scaled(outward(down), at)), down);
}
