import type { Body } from '../../engine/body/body.ts';
import { endOf, lengthOf, type SketchBuilder, startOf } from '../../engine/constraints/sketch-builder.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { ConstructionLog } from '../../engine/pattern/construction-log.ts';
import type { Corner, Girth, GirthPart, Join, Seam } from '../../engine/pattern/garment.ts';
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

/** How the panels are sewn to each other. */
export const bodiceSeams: readonly Seam[] = [
  {
    name: 'front princess, lower',
    a: [{ piece: 'side front', edge: 'princess lower' }],
    b: [{ piece: 'centre front', edge: 'princess', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'back princess',
    a: [{ piece: 'side back', edge: 'princess' }],
    b: [{ piece: 'centre back', edge: 'princess', reversed: true }],
    ease: 0,
    gatherRatio: 1,
  },
  {
    name: 'side',
    a: [{ piece: 'side front', edge: 'side' }],
    b: [{ piece: 'side back', edge: 'side' }],
    ease: 0,
    gatherRatio: 1,
  },
];

const corner = (piece: string, edge: string, seam: string): Corner => ({ piece, edge, seam });

/** Where the panels' lines must run on once sewn: all but a back neckline that ends in a point. */
export const bodiceJoins = ({ backNeckline }: BodiceStyling): readonly Join[] =>
  backNeckline === 'round' ? [...joins, roundNeckline] : joins;

const roundNeckline: Join = {
  kind: 'mirror',
  name: 'neckline at centre back',
  a: { piece: 'centre back', edge: 'neckline', seam: 'centre back' },
};

const joins: readonly Join[] = [
  {
    kind: 'across',
    name: 'waist at the front princess seam',
    a: corner('side front', 'waist', 'princess lower'),
    b: corner('centre front', 'waist', 'princess'),
  },
  {
    kind: 'across',
    name: 'waist at the side seam',
    a: corner('side front', 'waist', 'side'),
    b: corner('side back', 'waist', 'side'),
  },
  {
    kind: 'across',
    name: 'waist at the back princess seam',
    a: corner('side back', 'waist', 'princess'),
    b: corner('centre back', 'waist', 'princess'),
  },
  {
    kind: 'across',
    name: 'armhole at the side seam',
    a: corner('side front', 'armhole underarm', 'side'),
    b: corner('side back', 'armhole underarm', 'side'),
  },
  { kind: 'mirror', name: 'waist at centre front', a: corner('centre front', 'waist', 'centre front') },
  {
    kind: 'mirror',
    name: 'under-bust seam at centre front',
    a: corner('centre front', 'under-bust', 'centre front'),
  },
  { kind: 'mirror', name: 'waist at centre back', a: corner('centre back', 'waist', 'centre back') },
  {
    kind: 'along',
    name: 'front armhole at its notch',
    piece: 'side front',
    from: 'armhole upper',
    to: 'armhole underarm',
  },
  {
    kind: 'along',
    name: 'back armhole at its notch',
    piece: 'side back',
    from: 'armhole upper',
    to: 'armhole underarm',
  },
  {
    kind: 'along',
    name: 'side front princess at the under-bust seam',
    piece: 'side front',
    from: 'princess lower',
    to: 'princess upper',
  },
];

const line = (piece: string, name: string): GirthPart => ({ kind: 'line', piece, line: name, times: 2 });
const edge = (piece: string, name: string): GirthPart => ({ kind: 'edge', piece, edge: name, times: 2 });

/**
 * The girths the bodice must have, measured across its panels and the insert, left and right; `styling` with the
 * ease that the fitting left.
 */
export function bodiceGirths(body: Body, styling: BodiceStyling): readonly Girth[] {
  const { bustGirth, underBustGirth, waistGirth } = body.size;
  return [
    {
      level: 'bust',
      body: bustGirth,
      ease: styling.bustEase,
      parts: [
        line('centre back', 'bust level'),
        line('side back', 'bust level'),
        line('side front', 'bust level'),
        { kind: 'line', piece: 'insert', line: 'bust level', times: 1 },
      ],
    },
    {
      level: 'under-bust',
      body: underBustGirth,
      ease: styling.underBustEase,
      parts: [
        line('centre back', 'under-bust level'),
        line('side back', 'under-bust level'),
        line('side front', 'under-bust level'),
        edge('centre front', 'under-bust'),
        edge('centre front', 'under-bust end'),
      ],
    },
    {
      level: 'waist',
      body: waistGirth,
      ease: styling.waistEase,
      parts: [
        edge('centre back', 'waist'),
        edge('side back', 'waist'),
        edge('side front', 'waist'),
        edge('centre front', 'waist'),
      ],
    },
  ];
}
