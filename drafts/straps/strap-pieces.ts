import type { Curve } from '../../engine/geometry/curve.ts';
import { outlineCrossings } from '../../engine/geometry/intersect.ts';
import { between, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { transformedCurve, turnedBy } from '../../engine/geometry/transform.ts';
import { unit } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { edgesOn } from '../bodice/armhole-parts.ts';
import { easedLine } from '../bodice/eased-line.ts';
import { armholeNotches, type PanelCut, panelTop, strapNotches } from '../bodice/panel-cut.ts';
import { grainThrough } from '../grainline.ts';
import { seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';

/** How far across a strap its grainline runs, from the neck: beside it there is room for the label. */
const GRAIN_AT = 0.12;

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
  return {
    name,
    number: part === 'front' ? 6 : 6.5,
    edges,
    grain: strapGrain(edges, {
      shoulder: [upright(half.inner), upright(half.outer)],
      end: [upright(half.sideCorner), upright(panelTop(cut, part))],
    }),
    notches: [...armholeNotches(cut, part, name), ...strapNotches(cut, part, `${part} end`)],
    lines: [],
    marks: [],
    cut: [
      { cloth: 'self', count: 2, onFold: false, pair: true },
      { cloth: 'lining', count: 2, onFold: false, pair: true },
    ],
  };
}

/** The two ends of a strap, each from the neck to the armhole. */
interface StrapEnds {
  readonly shoulder: readonly [Point, Point];
  readonly end: readonly [Point, Point];
}

/** The grainline along a strap, through the cloth half-way down it: one that curves bows away from its ends' chord. */
function strapGrain(edges: readonly PieceEdge[], { shoulder, end }: StrapEnds): Piece['grain'] {
  const [top, foot] = [between(...shoulder, GRAIN_AT), between(...end, GRAIN_AT)];
  const along = vectorBetween(top, foot);
  const across = outlineCrossings(edges, {
    through: between(top, foot, 0.5),
    heading: vectorBetween(...shoulder),
  });
  const [neck, armhole] = [across[0]?.point ?? top, across.at(-1)?.point ?? foot];
  return grainThrough(edges, between(neck, armhole, GRAIN_AT), unit(along));
}
