import type { Body } from '../../engine/body/body.ts';
import { endOf, lengthOf, type SketchBuilder, startOf } from '../../engine/constraints/sketch-builder.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { ConstructionLog } from '../../engine/pattern/construction-log.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { type BackFoundation, drawBack } from './back-foundation.ts';
import { type BackLines, planBack } from './back-lines.ts';
import { centreBackPiece, sideBackPiece } from './back-pieces.ts';
import type { BodiceStyling } from './choices.ts';
import { drawFront, type FrontFoundation } from './front-foundation.ts';
import { type FrontLines, planFront } from './front-lines.ts';
import { centreFrontPiece, sideFrontPiece } from './front-pieces.ts';
import { refuseImpossible } from './impossible.ts';
import { levelTexts } from './level-texts.ts';
import { drawLevels, type Levels } from './levels.ts';
import { takeIn } from './take-in.ts';
import { shareWidths, type Widths } from './widths.ts';

/** The bodice on paper: its foundation, and its lines as the sketch knows them. */
export interface BodicePlan {
  readonly levels: Levels;
  readonly widths: Widths;
  readonly back: BackFoundation;
  readonly front: FrontFoundation;
  readonly backLines: BackLines;
  readonly frontLines: FrontLines;
}

/** Draws the foundation of back and front and asks the sketch for their lines. */
export function planBodice(
  sketch: SketchBuilder,
  body: Body,
  styling: BodiceStyling,
  log: ConstructionLog,
): BodicePlan {
  const levels = drawLevels(body, styling, log);
  const widths = takeIn(body, styling, shareWidths(body, styling, levels, log), levels, log);
  const back = drawBack(body, styling, levels, widths, log);
  const front = drawFront(body, styling, levels, widths, back.strapPosition, log);
  refuseImpossible(body, { levels, front }, log);
  const backLines = planBack(sketch, back, levels, widths, styling);
  const frontLines = planFront(sketch, front, levels, styling);
  sketch.relation(
    {
      kind: 'length',
      name: 'the waist measures half the girth and its ease',
      terms: [
        lengthOf([backLines.centreWaist, backLines.sideWaist, frontLines.sideWaist, frontLines.centreWaist]),
      ],
      mm: widths.halfWaist,
    },
    {
      kind: 'smooth across seam',
      name: 'waist across the side seam',
      a: { from: endOf(frontLines.side), to: startOf(frontLines.sideWaist) },
      b: { from: endOf(backLines.side), to: startOf(backLines.sideWaist) },
    },
  );
  log.say(
    'Curves of the bodice',
    'princess edges equal from level to level, the waist whole and without corners across its seams, the armholes square to the side seams and in line with the straps; every curve as fair as these allow',
    'construction',
  );
  return { levels, widths, back, front, backLines, frontLines };
}

/**
 * Cuts the four panels from the solved sketch, `styling` with the ease that the fitting left; the insert's gathers
 * end `gathersEndAt` mm before the princess seam.
 */
export function bodicePieces(
  plan: BodicePlan,
  solution: Solution,
  body: Body,
  styling: BodiceStyling,
  gathersEndAt: number,
): readonly Piece[] {
  const { back, backLines, front, frontLines, levels } = plan;
  const texts = levelTexts(body, styling);
  return [
    centreFrontPiece(front, frontLines, solution, levels, styling, gathersEndAt),
    sideFrontPiece(front, frontLines, solution, levels, styling, texts),
    centreBackPiece(back, backLines, solution, levels, styling, texts),
    sideBackPiece(back, backLines, solution, levels, styling, texts),
  ];
}
