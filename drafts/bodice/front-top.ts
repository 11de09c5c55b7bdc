import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import type { Mark, Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { crossMark, levelLine, seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import { necklineSide } from './front-neckline.ts';
import { armholeEdges, curvesOf, jointNotches, type PanelCut, panelTop } from './panel-cut.ts';
import { sideFrontShoulder } from './shoulder-line.ts';

/** The bust level on a plain centre front. */
export const bustLine = ({ plan, texts }: PanelCut): Piece['lines'][number] =>
  levelLine('bust', point(0, plan.foundation.levels.bust.value), plan.foundation.front.pivot, texts.bust);

/** The match points of the princess edge over the bust, drawn down from its top. */
export const princessNotches = (princess: PieceEdge): readonly Notch[] => [
  ...jointNotches(princess, [{ name: 'bust level', mark: 'single' }]),
  { name: 'under-bust seam', edge: princess.name, at: edgeLength(princess), mark: 'single' },
];

/** The bust point, on the panel it lies on: `beyond` the princess line (mm), less than nothing towards the centre. */
export const bustPointMark = ({ plan }: PanelCut, panel: 'centre' | 'side'): readonly Mark[] => {
  const { bustPoint, pivot } = plan.foundation.front;
  const beyond = bustPoint.value - pivot.x;
  return (panel === 'side') === beyond > 0 ? [crossMark('bust point', point(bustPoint.value, pivot.y))] : [];
};

/** The princess edge of a plain centre front, from its top to the under-bust level. */
export const upperPrincess = (cut: PanelCut): PieceEdge =>
  seamEdge(
    'princess upper',
    curvesOf(cut, cut.plan.front.centrePrincess.overBust ?? []),
    cut.allowance.seam,
    sewingRank.princess,
    2,
  );

/** The top of a plain centre front: neckline, and where they are its own, the neckline's side, shoulder and armhole. */
export function neckAndShoulder(cut: PanelCut, piece: string): readonly PieceEdge[] {
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
  return [across, ...neckSide(cut), shoulder, ...armholeEdges(cut, 'front', piece)];
}

/** Where the armhole meets the shoulder on a centre panel that reaches it. */
const armholeTop = ({ armholes }: PanelCut, part: 'front' | 'back'): Point =>
  armholes[part].edges[0]?.curves[0]?.from ?? point(0, 0);

/** The side of a neckline that has one, from its corner up to the shoulder. */
function neckSide({ plan, allowance }: PanelCut): readonly PieceEdge[] {
  const side = necklineSide(plan.lines);
  if (!side) return [];
  return [seamEdge('neckline side', [reversed(side)], allowance.neckline, sewingRank.neckline, 1)];
}

/** The top of the side front: strap end or shoulder, where it reaches so far, and the side of a neckline. */
export function sideFrontTop(cut: PanelCut): readonly PieceEdge[] {
  const { lines } = cut.plan;
  const { style, front: half } = lines;
  const seam = (name: string, curves: readonly Curve[]): PieceEdge =>
    seamEdge(name, curves, cut.allowance.seam, sewingRank.strap);
  if (style.princess.front === 'armhole') return [];
  if (style.shoulder === 'strap') return [seam('strap', straight(half.sideCorner, panelTop(cut, 'front')))];
  const neckline = style.princess.front === 'neckline' ? neckSide(cut) : [];
  return [...neckline, seam('shoulder', sideFrontShoulder(lines))];
}
