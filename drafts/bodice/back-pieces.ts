import { moved, point, vectorBetween } from '../../engine/geometry/point.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { grainline } from '../grainline.ts';
import { cutPair, levelLine, seamEdge, solvedPoint, straight } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import {
  armholeEdges,
  armholeNotches,
  curvesOf,
  grainSquareToWaist,
  jointNotches,
  type PanelCut,
  panelTop,
  sideAtLevel,
  sideNotches,
  strapNotches,
} from './panel-cut.ts';

/** Between top, blade, under-bust and waist a back princess edge may change from hollow to round three times. */
const PRINCESS_TURNS = 3;

/** Cuts the back panels. */
export const backPieces = (cut: PanelCut): readonly Piece[] => [centreBack(cut), sideBack(cut)];

const princessEdge = (cut: PanelCut, names: readonly string[]): PieceEdge =>
  seamEdge('princess', curvesOf(cut, names), cut.allowance.seam, sewingRank.princess, PRINCESS_TURNS);

/** The centre back: neckline, shoulder where it has one, princess edge, waist, and the seam that opens. */
function centreBack(cut: PanelCut): Piece {
  const { plan, allowance, solution, texts } = cut;
  const { foundation, lines } = plan;
  const { levels: at } = plan.back;
  const { back, levels } = foundation;
  const { style } = lines;
  const princess = princessEdge(cut, plan.back.centrePrincess);
  const towardsSide = unit(outward(vectorBetween(back.centreWaist, lines.back.centre)));
  const waistWidth = solvedPoint(solution, at.waist.centre).x - back.centreWaist.x;
  const inset = scaled(towardsSide, -waistWidth / 2);
  const top =
    style.princess.back === 'armhole'
      ? (cut.armholes.back.edges[0]?.curves[0]?.from ?? point(0, 0))
      : lines.back.princess.centre;
  const level = (name: string, y: number, end: string, text: string) =>
    levelLine(name, point(back.centreBackAt(y), y), solvedPoint(solution, end), text);
  return {
    name: 'centre back',
    number: 4,
    edges: [
      seamEdge('neckline', curvesOf(cut, [plan.necklines.back]), allowance.neckline, sewingRank.neckline, 1),
      ...(style.shoulder === 'whole'
        ? [
            seamEdge(
              'shoulder',
              straight(lines.back.atCentre.inner, top),
              allowance.seam,
              sewingRank.shoulder,
            ),
          ]
        : []),
      ...armholeEdges(cut, 'back', 'centre back'),
      princess,
      seamEdge('waist', curvesOf(cut, [plan.back.centreWaist]), allowance.seam, sewingRank.waist, 1),
      seamEdge(
        'centre back',
        straight(back.centreWaist, lines.back.centre),
        allowance.centreBack,
        sewingRank.centreBack,
      ),
    ],
    grain: grainline(moved(lines.back.centre, inset), moved(back.centreWaist, inset)),
    notches: [
      ...armholeNotches(cut, 'back', 'centre back'),
      ...jointNotches(princess, [
        { name: 'bust level', mark: 'double' },
        { name: 'under-bust level', mark: 'level' },
      ]),
    ],
    lines: [
      level('bust', levels.bust.value, at.bust.centre, texts.bust),
      level('under-bust', levels.underBust.value, at.underBust.centre, texts.underBust),
    ],
    marks: [],
    cut: cutPair('self'),
  };
}

/** The side back: strap end or shoulder, armhole, side seam, waist and princess edge. */
function sideBack(cut: PanelCut): Piece {
  const { plan, allowance, solution, texts } = cut;
  const { foundation, lines } = plan;
  const { levels: at } = plan.back;
  const { levels } = foundation;
  const { style, back: half } = lines;
  const princess = princessEdge(cut, plan.back.sidePrincess);
  const side = curvesOf(cut, plan.back.side);
  const waist = solvedPoint(solution, at.waist.side);
  const top =
    style.princess.back === 'armhole'
      ? []
      : style.shoulder === 'strap'
        ? [
            seamEdge(
              'strap',
              straight(half.sideCorner, panelTop(cut, 'back')),
              allowance.seam,
              sewingRank.strap,
            ),
          ]
        : [
            seamEdge(
              'shoulder',
              straight(half.princess.side, half.outer),
              allowance.seam,
              sewingRank.shoulder,
            ),
          ];
  const level = (name: string, start: string, y: number, text: string) =>
    levelLine(name, solvedPoint(solution, start), sideAtLevel(side, y).point, text);
  return {
    name: 'side back',
    number: 5,
    edges: [
      ...top,
      ...armholeEdges(cut, 'back', 'side back'),
      seamEdge('side', side, allowance.side, sewingRank.side, 2),
      seamEdge('waist', curvesOf(cut, [plan.back.sideWaist]), allowance.seam, sewingRank.waist, 1),
      princess,
    ],
    grain: grainSquareToWaist(cut, waist, point(foundation.back.side.waist.x, levels.waist.value)),
    notches: [
      ...jointNotches(princess, [
        { name: 'under-bust level', mark: 'level' },
        { name: 'bust level', mark: 'double' },
      ]),
      ...armholeNotches(cut, 'back', 'side back'),
      ...strapNotches(cut, 'back'),
      ...sideNotches(cut, side),
    ],
    lines: [
      level('bust', at.bust.side, levels.bust.value, texts.bust),
      level('under-bust', at.underBust.side, levels.underBust.value, texts.underBust),
    ],
    marks: [],
    cut: cutPair('self'),
  };
}
