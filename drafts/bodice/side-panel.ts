import type { Curve } from '../../engine/geometry/curve.ts';
import { between, distance, type Point } from '../../engine/geometry/point.ts';
import type { Mark, Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';
import { cross, cutPair, levelLine, seamEdge, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { LevelTexts } from './level-texts.ts';
import type { Levels } from './levels.ts';
import { armholeEdges, grainSquareToWaist, sideAtLevel, sideNotches } from './panel-marks.ts';

/** What a side panel, of the back or of the front, is cut from. */
export interface SidePanel {
  readonly name: string;
  readonly number: number;
  readonly strap: { readonly inner: Point; readonly outer: Point };
  /** From the strap to the underarm; its notch stands where it is no longer sewn flat, this share from the underarm. */
  readonly armhole: Curve;
  readonly armholeFlat: number;
  readonly armholeNotch: Pick<Notch, 'name' | 'mark'>;
  readonly side: Curve;
  readonly underarm: Point;
  readonly sideWaist: Point;
  readonly waist: Curve;
  /** Up from the waist to the strap, with what is marked on it. */
  readonly princess: readonly PieceEdge[];
  readonly princessNotches: readonly Notch[];
  /** Where it crosses the levels. */
  readonly princessAt: { readonly waist: Point; readonly bust: Point; readonly underBust: Point };
  /** How far inside the princess edge her bust point lies at the bust level, mm, where it lies on this panel. */
  readonly bustPointInside?: number;
  readonly allowance: BodiceAllowances;
}

/** Cuts a side panel: strap end, armhole, side seam, waist and princess edge. */
export function sidePanelPiece(panel: SidePanel, levels: Levels, texts: LevelTexts): Piece {
  const { strap, armholeNotch, underarm, sideWaist, princessAt, allowance } = panel;
  const [upperArmhole, underarmEdge] = armholeEdges([panel.armhole], panel.armholeFlat, allowance.armhole);
  const sideAt = (level: number): Point => sideAtLevel(underarm, sideWaist, levels, level);
  return {
    name: panel.name,
    number: panel.number,
    edges: [
      seamEdge('strap', straight(strap.inner, strap.outer), allowance.seam, sewingRank.strap),
      upperArmhole,
      underarmEdge,
      seamEdge('side', [panel.side], allowance.side, sewingRank.side),
      seamEdge('waist', [panel.waist], allowance.seam, sewingRank.waist, 1),
      ...panel.princess,
    ],
    grain: grainSquareToWaist(princessAt.waist, sideWaist, levels),
    notches: [
      ...panel.princessNotches,
      { name: armholeNotch.name, edge: underarmEdge.name, at: 0, mark: armholeNotch.mark },
      {
        name: 'strap end',
        edge: 'strap',
        at: distance(strap.inner, strap.outer) / 2,
        mark: armholeNotch.mark,
      },
      ...sideNotches(underarm, sideWaist, levels),
    ],
    lines: [
      levelLine('bust level', princessAt.bust, sideAt(levels.bust), texts.bust),
      levelLine('under-bust level', princessAt.underBust, sideAt(levels.underBust), texts.underBust),
    ],
    marks: bustPoint(panel, sideAt(levels.bust)),
    cut: cutPair('self'),
  };
}

/** The bust point where it lies on the panel: from the princess edge along the bust level. */
const bustPoint = (
  { bustPointInside = 0, princessAt: { bust } }: SidePanel,
  sideAtBust: Point,
): readonly Mark[] =>
  bustPointInside > 0
    ? [cross('bust point', between(bust, sideAtBust, bustPointInside / distance(bust, sideAtBust)))]
    : [];
