import type { Solution } from '../../engine/constraints/solution.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength, edgeOf, lengthUpTo } from '../../engine/geometry/edge.ts';
import { edgeCrossings, levelAt } from '../../engine/geometry/intersect.ts';
import { between, distance, moved, type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { grainline } from '../grainline.ts';
import { seamEdge, solvedCurves } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { type ArmholeHalf, edgesOn } from './armhole-parts.ts';
import type { BodicePlan } from './bodice.ts';

/** What the panels are cut from: the plan and its solution, the armholes cut to the panels, and what is written on them. */
export interface PanelCut {
  readonly plan: BodicePlan;
  readonly solution: Solution;
  readonly armholes: { readonly front: ArmholeHalf; readonly back: ArmholeHalf };
  readonly allowance: BodiceAllowances;
  readonly texts: LevelTexts;
}

/** What the level lines of the panels say: the finished girth they add up to. */
export interface LevelTexts {
  readonly bust: string;
  readonly underBust: string;
}

/** The solved curves of these names. */
export const curvesOf = ({ solution }: PanelCut, names: readonly string[]): readonly Curve[] =>
  solvedCurves(solution, names);

/** The edges of an armhole that lie on this piece, in the order of its outline. An armhole may bend a trifle the other way. */
export const armholeEdges = (
  { armholes, allowance }: PanelCut,
  part: 'front' | 'back',
  piece: string,
): readonly PieceEdge[] =>
  edgesOn(armholes[part], piece).map(({ edge, curves }) =>
    seamEdge(edge, curves, allowance.armhole, sewingRank.armhole, 2),
  );

/** The notches of an armhole that stand on this piece: where a sleeve begins to be gathered or eased, and the shoulder. */
export function armholeNotches(
  { armholes }: PanelCut,
  part: 'front' | 'back',
  piece: string,
): readonly Notch[] {
  const { notched, edges } = armholes[part];
  const [top] = edges;
  const shoulder: Notch[] =
    part === 'front' && top?.piece === piece
      ? [{ name: 'shoulder', edge: top.edge, at: 0, mark: 'level' }]
      : [];
  return notched.piece === piece
    ? [
        ...shoulder,
        {
          name: `${part} armhole notch`,
          edge: notched.edge,
          at: 0,
          mark: part === 'front' ? 'single' : 'double',
        },
      ]
    : shoulder;
}

/** Notches where a princess edge of several curves passes from one to the next, named in that order. */
export function jointNotches(
  edge: PieceEdge,
  names: readonly { readonly name: string; readonly mark: Notch['mark'] }[],
): readonly Notch[] {
  let at = 0;
  return names.flatMap(({ name, mark }, i) => {
    const curve = edge.curves[i];
    if (!curve) return [];
    at += edgeLength({ name, curves: [curve] });
    return [{ name, edge: edge.name, at, mark }];
  });
}

/** Where the side seam, drawn down from the underarm, crosses a level. */
export function sideAtLevel(
  side: readonly Curve[],
  y: number,
): { readonly point: Point; readonly at: number } {
  const edge = edgeOf('side', side);
  const [crossing] = edgeCrossings(edge, levelAt(y));
  if (!crossing) throw new Error('A side seam does not cross its levels.');
  return { point: crossing.point, at: lengthUpTo(edge, crossing) };
}

/** Level notches down a side seam. */
export const sideNotches = (cut: PanelCut, side: readonly Curve[]): readonly Notch[] => {
  const { levels } = cut.plan.foundation;
  const notch = (name: string, y: number): Notch => ({
    name,
    edge: 'side',
    at: sideAtLevel(side, y).at,
    mark: 'level',
  });
  return [notch('bust level', levels.bust.value), notch('under-bust level', levels.underBust.value)];
};

/** A grainline square to the middle of a side panel's waist, up to the bust level. */
export function grainSquareToWaist({ plan }: PanelCut, waistIn: Point, waistOut: Point): Piece['grain'] {
  const { waist, bust } = plan.foundation.levels;
  const middle = between(waistIn, waistOut, 0.5);
  const up = unit(outward(vectorBetween(waistIn, waistOut)));
  return grainline(moved(middle, scaled(up, waist.value - bust.value)), middle);
}

/** Where the armhole begins on a side panel: at the strap's outer end, or at the shoulder. */
export const panelTop = ({ armholes }: PanelCut, part: 'front' | 'back'): Point => {
  const first = armholes[part].edges.find(({ piece }) => piece === `side ${part}`);
  return first?.curves[0]?.from ?? point(0, 0);
};

/** The mark half-way along a strap's end, which tells the front from the back: on the panel and on the strap. */
export function strapNotches(cut: PanelCut, part: 'front' | 'back', edge = 'strap'): readonly Notch[] {
  const { style, ...lines } = cut.plan.lines;
  if (style.shoulder === 'whole') return [];
  const at = distance(panelTop(cut, part), lines[part].sideCorner) / 2;
  return [{ name: 'strap end', edge, at, mark: part === 'front' ? 'single' : 'double' }];
}
