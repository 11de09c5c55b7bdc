import { lengthOf } from '../../engine/constraints/sketch-builder.ts';
import { distance, point } from '../../engine/geometry/point.ts';
import { degrees, figure } from '../../engine/pattern/construction-log.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Angle } from '../../engine/pattern/quantity.ts';
import type { BodicePlan } from '../bodice/bodice.ts';
import { fairLine } from '../fair-lines.ts';
import type { insertChoices } from './choices.ts';
import { insertRules as rules } from './rules.ts';

export type InsertTable = DraftingTable<typeof insertChoices>;

/** The insert's lines in the sketch (its right half), and what the pieces and checks need to know of it. */
export interface InsertLines {
  readonly bottom: string;
  readonly side: string;
  /** The points of the half at the neckline fold and at the foot of the side. */
  readonly top: string;
  readonly foot: string;
  /** Gather ratios along the under-bust seam and along the neckline. */
  readonly fullness: number;
  readonly drawn: number;
  /** The half's finished widths, before anything is spread: neckline and bust level, mm. */
  readonly necklineHalf: number;
  readonly bustHalf: number;
}

/**
 * Asks for the insert. Its sides are sewn flat to the side fronts' upper princess edges; below the bust it hangs
 * straight where the bodice comes in, so the bust dart's lower half turns into gathers and no dart is left.
 */
export function planInsert(table: InsertTable, { foundation, lines, front: frontLines }: BodicePlan): InsertLines {
  const { size, choice, sketch } = table;
  table.heading('Insert');
  const { front, levels } = foundation;
  const { corner, sideCorner } = lines.front;
  const cup = table.mm`Cup beyond the smallest: bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth} - ${rules.leastCup}, at least 0`;
  const fullness =
    choice.insertFullness === 'auto'
      ? table.ratio`Insert fullness under the bust: ${rules.leastFullness} + ${rules.fullnessPerMm} x ${cup}, at most ${rules.mostFullness}`
      : table.ratio`Insert fullness under the bust: ${choice.insertFullness}; as chosen`;
  const drawn =
    choice.necklineFullness === 'auto'
      ? table.ratio`Insert fullness along the neckline: ${rules.leastDrawn} + ${rules.drawnPerMm} x ${cup}, at most ${rules.mostFullness}`
      : table.ratio`Insert fullness along the neckline: ${choice.necklineFullness}; as chosen`;

  const necklineHalf = table.measured('Half the finished neckline', 'from centre front to its corner', corner.x);
  const topHalf = table.mm`Insert top, each half: ${drawn} x ${necklineHalf}`;
  const neckline = table.measured('Neckline below the back neck point', 'on the drawing', corner.y);
  const depth = table.mm`Insert length at centre front: under-bust level ${levels.underBust} - ${neckline}`;
  const top = sketch.fixed('insert top', point(topHalf.value, 0));
  const centreFoot = sketch.fixed('insert foot at centre front', point(0, depth.value));
  const seam = table.measured('Half the under-bust seam', 'on the drawing', front.underBust.centre.x);
  const gathered = table.mm`Insert bottom between its notches, each half: ${fullness} x (${seam} - ${rules.flatEnds})`;
  const bottomHalf = table.mm`Insert bottom, each half: ${gathered} + ${rules.flatEnds}`;
  const sideLength = table.measured(
    'Insert side, about',
    'from the neckline over the bust point to the under-bust seam',
    distance(front.underBust.side, front.pivot) + distance(front.pivot, sideCorner),
  );
  const lean = table.angle`Insert sides lean: arc sine of ((top ${topHalf} - bottom ${bottomHalf}) / ${sideLength}, at least -1, at most 1)`;
  refuseLean(table, lean, { fullness: fullness.value, drawn: drawn.value });
  const foot = sketch.point('insert foot at the side', point(bottomHalf.value, depth.value));
  const side = sketch.line('insert side', top, foot);
  const bottom = sketch.curve('insert bottom', foot, centreFoot, {
    end: { angle: sketch.fixedAngle('insert bottom square to centre front', Math.PI) },
  });
  fairLine(sketch, bottom);
  sketch.relation(
    {
      kind: 'length',
      name: 'insert side equals the side front',
      terms: [lengthOf([side]), lengthOf(frontLines.sidePrincess.slice(1), -1)],
      mm: 0,
    },
    {
      kind: 'length',
      name: 'insert bottom gathers into the under-bust seam',
      terms: [lengthOf([bottom])],
      mm: bottomHalf.value,
    },
  );
  table.say`Insert, slashed and spread: cut into strips and spread evenly until the bottom measures ${bottomHalf} for ${seam} of seam and the top ${topHalf} for ${necklineHalf} of neckline; the edges are blended [slash and spread in parallel, common practice, no source]`;
  return {
    bottom,
    side,
    top,
    foot,
    fullness: fullness.value,
    drawn: drawn.value,
    necklineHalf: necklineHalf.value,
    bustHalf: front.pivot.x,
  };
}

/** Refuses sides that lean so far that the side fronts would have to bulge to be as long. */
function refuseLean(
  table: InsertTable,
  lean: Angle,
  { fullness, drawn }: Pick<InsertLines, 'fullness' | 'drawn'>,
): void {
  const most = (rules.mostLean.value * Math.PI) / 180;
  if (Math.abs(lean.value) <= most) return;
  const [more, less] =
    lean.value > 0 ? ['necklineFullness', 'insertFullness'] : ['insertFullness', 'necklineFullness'];
  table.refuse({
    code: 'fullness-out-of-reach',
    severity: 'error',
    path: more,
    value: (lean.value * 180) / Math.PI,
    limits: { min: -rules.mostLean.value, max: rules.mostLean.value, unit: 'degrees' },
    message: `An insert drawn up ${figure(drawn)} to 1 along the neckline and gathered ${figure(fullness)} to 1 under the bust cannot be cut: its sides would lean by ${degrees(Math.abs(lean.value))}. Choose less ${more}, or more ${less}.`,
  });
}
