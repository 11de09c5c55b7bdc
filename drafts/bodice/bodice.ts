import { isLong } from '../../engine/constraints/statements.ts';
import type { DimensionPart } from '../../engine/pattern/dimension.ts';
import type { BodiceAllowances } from '../allowances.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { FoundationTable } from '../foundation/table.ts';
import { straight } from '../piece-edges.ts';
import { planArmhole } from './armholes.ts';
import { type BackLines, planBack } from './back-lines.ts';
import { planBackNeckline } from './back-neckline.ts';
import { type FrontLines, planFront } from './front-lines.ts';
import { necklineSide, planFrontNeckline } from './front-neckline.ts';
import { sideFrontShoulder } from './shoulder-line.ts';
import { planSides } from './side-lines.ts';
import type { StyleLines } from './style-lines.ts';

/** The bodice on paper: the foundation, the style lines on it, and its curves as the sketch knows them. */
export interface BodicePlan {
  readonly foundation: Foundation;
  readonly lines: StyleLines;
  readonly back: BackLines;
  readonly front: FrontLines;
  /** The necklines, from the centre outwards; the front one of a plain front. */
  readonly necklines: { readonly front: string | undefined; readonly back: string };
}

/** How wide the allowances of the hollow edges are, mm: none may bend too tightly to be turned. */
export type CurvedAllowances = Pick<BodiceAllowances, 'armhole' | 'neckline' | 'seam'>;

/** Asks the sketch for the curves of a bodice: the foundation with the lines of a style on it. */
export function planBodice(
  table: FoundationTable,
  foundation: Foundation,
  lines: StyleLines,
  allowance: CurvedAllowances,
): BodicePlan {
  const { sketch } = table;
  const { style } = lines;
  table.heading('The curves of the bodice');
  const armhole = (part: 'front' | 'back') => planArmhole(sketch, part, foundation, lines, allowance.armhole);
  const armholes = { front: armhole('front'), back: armhole('back') };
  const underarms = { front: armholes.front.underarm, back: armholes.back.underarm };
  const sides = planSides(sketch, foundation, underarms);
  const beside = (part: 'front' | 'back') => ({ armhole: armholes[part], side: sides[part] });
  const back = planBack(sketch, foundation, lines, beside('back'));
  const front = planFront(sketch, foundation, lines, beside('front'), allowance.seam);
  const necklines = {
    front: style.front === 'gathered' ? undefined : planFrontNeckline(sketch, lines, allowance.neckline),
    back: planBackNeckline(sketch, foundation, lines, allowance.neckline),
  };
  const { halfWaist, backPrincess } = foundation.widths;
  const { side, centreWaist } = foundation.back;
  const backWaist = side.waist.x - centreWaist.x - backPrincess.waist.value;
  sketch.relation(
    isLong('the back waist measures its share of the girth', [back.centreWaist, back.sideWaist], backWaist),
    isLong(
      'the front waist measures the rest of half the girth and its ease',
      [front.sideWaist, front.centreWaist],
      halfWaist.value - backWaist,
    ),
  );
  const plan = { foundation, lines, back, front, necklines };
  drawCurves(table, plan);
  return plan;
}

/** Says which curves were asked for, and draws them, with the straight lines that the style puts between them. */
function drawCurves(table: FoundationTable, { foundation, lines, back, front, necklines }: BodicePlan): void {
  const { halfWaist } = foundation.widths;
  table.say`Curves of the back: the princess edges equal from level to level, the armhole square to the shoulder and to the side seam, the neckline square to the centre back; every curve as fair as these allow`;
  table.curves('back', [
    ...back.centrePrincess,
    ...back.sidePrincess,
    ...back.armhole,
    ...back.side,
    necklines.back,
  ]);
  table.say`Curves of the front: the same; the side front lies as the closed dart has turned it`;
  table.curves('front', [
    ...front.sidePrincess,
    ...(front.centrePrincess.overBust ?? []),
    front.centrePrincess.below,
    ...front.armhole,
    ...front.side,
  ]);
  if (necklines.front !== undefined) table.curves('front', [necklines.front]);
  const neckSide = necklineSide(lines);
  if (neckSide) table.line('front', 'neckline side', [neckSide]);
  const centreFront = straight(lines.front.centre, foundation.front.centreWaist);
  table.line('front', 'centre front', centreFront);
  const shoulder = sideFrontShoulder(lines);
  if (shoulder.length > 0) table.line('front', 'shoulder, dart closed', shoulder);
  table.say`Waist: whole and without corners across its seams, half of it ${halfWaist} mm long, shared by front and back as drawn`;
  table.curves('back', [back.centreWaist, back.sideWaist]);
  table.curves('front', [front.sideWaist, front.centreWaist]);
  table.laidOut(halfWaist, 1, () => waistLines({ back, front }));
}

/** Half the waist as it lies on the drawings of back and front. */
export const waistLines = ({ back, front }: Pick<BodicePlan, 'back' | 'front'>): readonly DimensionPart[] => [
  { on: 'back', name: back.centreWaist },
  { on: 'back', name: back.sideWaist },
  { on: 'front', name: front.sideWaist },
  { on: 'front', name: front.centreWaist },
];
