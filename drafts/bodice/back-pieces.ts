import type { Solution } from '../../engine/constraints/solution.ts';
import { moved, point, vectorBetween } from '../../engine/geometry/point.ts';
import { outward, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { bodiceAllowances } from '../allowances.ts';
import { grainline } from '../grainline.ts';
import {
  cutPair,
  levelLine,
  seamEdge,
  solvedCurve,
  solvedCurves,
  solvedPoint,
  straight,
} from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';
import type { BackFoundation } from './back-foundation.ts';
import type { BackLines } from './back-lines.ts';
import type { BodiceStyling } from './choices.ts';
import type { LevelTexts } from './level-texts.ts';
import type { Levels } from './levels.ts';
import { jointNotches } from './panel-marks.ts';
import { bodiceRules as rules } from './rules.ts';
import { sidePanelPiece } from './side-panel.ts';

/** Between strap, blade, under-bust and waist a back princess edge may change from hollow to round three times. */
const PRINCESS_TURNS = 3;

/** Cuts the centre back panel: neckline, princess edge, waist, and the seam that opens. */
export function centreBackPiece(
  back: BackFoundation,
  lines: BackLines,
  solution: Solution,
  levels: Levels,
  styling: BodiceStyling,
  texts: LevelTexts,
): Piece {
  const allowance = bodiceAllowances(styling);
  const princess = seamEdge(
    'princess',
    solvedCurves(solution, lines.centrePrincess),
    allowance.seam,
    sewingRank.princess,
    PRINCESS_TURNS,
  );
  const towardsSide = unit(outward(vectorBetween(back.centreWaist, back.centreNeck)));
  const waistWidth = solvedPoint(solution, 'centre back waist').x - back.centreWaist.x;
  const inset = scaled(towardsSide, -waistWidth / 2);
  return {
    name: 'centre back',
    number: 4,
    edges: [
      seamEdge(
        'neckline',
        solvedCurves(solution, [lines.neckline]),
        allowance.neckline,
        sewingRank.neckline,
        1,
      ),
      princess,
      seamEdge('waist', solvedCurves(solution, [lines.centreWaist]), allowance.seam, sewingRank.waist, 1),
      seamEdge(
        'centre back',
        straight(back.centreWaist, back.centreNeck),
        allowance.centreBack,
        sewingRank.centreBack,
      ),
    ],
    grain: grainline(moved(back.centreNeck, inset), moved(back.centreWaist, inset)),
    notches: jointNotches(princess, [
      { name: 'bust level', mark: 'double' },
      { name: 'under-bust level', mark: 'level' },
    ]),
    lines: [
      levelLine(
        'bust level',
        point(back.centreBackAt(levels.bust), levels.bust),
        solvedPoint(solution, 'centre back bust'),
        texts.bust,
      ),
      levelLine(
        'under-bust level',
        point(back.centreBackAt(levels.underBust), levels.underBust),
        solvedPoint(solution, 'centre back under bust'),
        texts.underBust,
      ),
    ],
    marks: [],
    cut: cutPair('self'),
  };
}

/** Cuts the side back panel: strap end, armhole, side seam, waist and princess edge. */
export function sideBackPiece(
  back: BackFoundation,
  lines: BackLines,
  solution: Solution,
  levels: Levels,
  styling: BodiceStyling,
  texts: LevelTexts,
): Piece {
  const allowance = bodiceAllowances(styling);
  const princess = seamEdge(
    'princess',
    solvedCurves(solution, lines.sidePrincess),
    allowance.seam,
    sewingRank.princess,
    PRINCESS_TURNS,
  );
  const at = (level: string) => solvedPoint(solution, `side back ${level}`);
  return sidePanelPiece(
    {
      name: 'side back',
      number: 5,
      strap: back.strap,
      armhole: solvedCurve(solution, lines.armhole),
      armholeFlat: rules.backNotch.value,
      armholeNotch: { name: 'back armhole notch', mark: 'double' },
      side: solvedCurve(solution, lines.side),
      underarm: back.underarm,
      sideWaist: back.sideWaist,
      waist: solvedCurve(solution, lines.sideWaist),
      princess: [princess],
      princessNotches: jointNotches(princess, [
        { name: 'under-bust level', mark: 'level' },
        { name: 'bust level', mark: 'double' },
      ]),
      princessAt: { waist: at('waist'), bust: at('bust'), underBust: at('under bust') },
      allowance,
    },
    levels,
    texts,
  );
}
