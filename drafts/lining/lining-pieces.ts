import { joinedEdges } from '../../engine/geometry/edge.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import type { Seam } from '../../engine/pattern/seam.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { BodiceSetting } from './inside.ts';
import { isArmhole, isNeckline } from './panels.ts';
import { setBack } from './set-back.ts';

/** An edge that is turned under and sewn by hand, when all else is done. */
export const felled = (edge: PieceEdge): PieceEdge => ({ ...edge, rank: sewingRank.felled });

/** What the lining of a panel is called. */
export const liningOf = (panel: string): string => `${panel} lining`;

/** What lining panels are cut by. */
export interface LiningCut {
  readonly setting: BodiceSetting;
  /** The seams of the panels with each other, which their linings have too. */
  readonly panelSeams: readonly Seam[];
  /** mm */
  readonly turnOfCloth: number;
  /** Of the seam at the zip, once the zip is in, mm. */
  readonly allowance: number;
}

/** Necklines, armholes and strap ends: there a lining lies back by the turn of the cloth. */
export const isFinished = (edge: PieceEdge): boolean =>
  isNeckline(edge) || isArmhole(edge) || edge.name === 'strap';

/**
 * Cuts the lining of a panel: the same seams and waist, and the finished edges set back. What is neither a seam of the
 * lining with itself nor sewn by machine to the bodice is felled.
 */
export function liningPiece(panel: Piece, { setting, panelSeams, turnOfCloth, allowance }: LiningCut): Piece {
  const inPanelSeams = new Set<string>();
  for (const { a, b } of panelSeams)
    for (const side of [a, b])
      for (const { piece, edge } of side) if (piece === panel.name) inPanelSeams.add(edge);
  const sewnTo = (edge: PieceEdge): 'lining' | 'bodice' | 'felled' => {
    if (inPanelSeams.has(edge.name)) return 'lining';
    return isMachined(edge, setting) ? 'bodice' : 'felled';
  };
  const outline = ungathered(panel.edges);
  const edges = setBack(outline, { isSet: isFinished, by: turnOfCloth });
  return {
    ...panel,
    name: liningOf(panel.name),
    edges: edges.map((edge) => {
      if (edge.turn === 'fold' || sewnTo(edge) !== 'felled') return edge;
      return felled(edge.name === 'centre back' ? { ...edge, allowance } : edge);
    }),
    notches: panel.notches.flatMap((notch) => {
      const at = outline.findIndex(({ name }) => name === notch.edge);
      const [before, edge] = [outline.at(at - 1), outline[at]];
      if (at < 0 || !edge || !before || notch.mark === 'gather') return [];
      if (sewnTo(edge) !== 'lining') return notch.at === 0 || notch.mark === 'fold' ? [notch] : [];
      return [isFinished(before) ? { ...notch, at: notch.at - turnOfCloth } : notch];
    }),
    marks: [],
    cut: panel.cut.map((each) => ({ ...each, cloth: 'lining' })),
  };
}

/** Whether an edge of the lining is sewn to the bodice, or to the other half of the lining, by machine. */
function isMachined(edge: PieceEdge, { sleeve, skirt, opening }: BodiceSetting): boolean {
  if (isArmhole(edge)) return sleeve === 'none';
  if (edge.name === 'waist') return !skirt;
  if (edge.name === 'centre back') return opening === 'side';
  return isNeckline(edge);
}

/** Nothing is gathered into a lining, so its under-bust edge is one, which parts where gathers end in the panel. */
function ungathered(edges: readonly PieceEdge[]): readonly PieceEdge[] {
  const end = edges.find(({ name }) => name === 'under-bust end');
  return end === undefined
    ? edges
    : edges.flatMap((edge) =>
        edge === end
          ? []
          : [edge.name === 'under-bust' ? { ...edge, ...joinedEdges(edge.name, [edge, end]) } : edge],
      );
}
