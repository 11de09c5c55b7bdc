import { isLong, sewnEqual } from '../../engine/constraints/statements.ts';
import { point, turnedAbout } from '../../engine/geometry/point.ts';
import type { Mm, Ratio } from '../../engine/pattern/quantity.ts';
import { degrees, figure } from '../../engine/text/figure.ts';
import { fairLine } from '../fair-lines.ts';
import { straight } from '../piece-edges.ts';
import type { InsertTable } from './choices.ts';
import { insertRules as rules } from './rules.ts';

/** The place in the front that an insert fills, as half of it lies on the foundation. */
export interface InsertPlace {
  /** The finished neckline, and the bust level from the centre front to the princess line. */
  readonly neckline: Mm;
  readonly bust: Mm;
  /** The under-bust seam it is gathered to. */
  readonly underBust: Mm;
  /** From the neckline straight down the centre front to the under-bust level. */
  readonly depth: Mm;
  /** About how long its side is. */
  readonly side: Mm;
  /** The curves of the side front's edge that the side is sewn to, in the sketch. */
  readonly sideFront: readonly string[];
}

/** The insert's lines in the sketch (its right half), and what the pieces and checks need to know of it. */
export interface InsertLines {
  readonly bottom: string;
  readonly side: string;
  /** The points of the half at the neckline fold and at the foot of the side. */
  readonly top: string;
  readonly foot: string;
  /** Gather ratios along the under-bust seam and along the neckline. */
  readonly fullness: Ratio;
  readonly drawn: Ratio;
  readonly place: InsertPlace;
}

/** How much cloth is gathered under the bust, and drawn up along the neckline, for each mm of what it is sewn to. */
function fullnesses({ size, choice, mm, ratio }: InsertTable): Pick<InsertLines, 'fullness' | 'drawn'> {
  const cup = mm`Cup difference: bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth}`;
  const fullness =
    choice.insertFullness === 'auto'
      ? ratio`Insert fullness under the bust: ${rules.leastFullness} + ${rules.fullnessPerMm} x (cup difference ${cup} - ${rules.leastCup}, at least 0), at most ${rules.mostFullness}`
      : ratio`Insert fullness under the bust: ${choice.insertFullness}; as chosen`;
  const drawn =
    choice.necklineFullness === 'auto'
      ? ratio`Insert fullness along the neckline: ${rules.leastDrawn} + ${rules.drawnPerMm} x (cup difference ${cup} - ${rules.leastCup}, at least 0), at most ${rules.mostFullness}`
      : ratio`Insert fullness along the neckline: ${choice.necklineFullness}; as chosen`;
  return { fullness, drawn };
}

/**
 * Asks for the insert. Its sides are sewn flat to the side fronts' upper princess edges; below the bust it hangs
 * straight where the bodice comes in, so the bust dart's lower half turns into gathers and no dart is left.
 */
export function planInsert(table: InsertTable, place: InsertPlace): InsertLines {
  const { sketch, choice, mm, angle, say } = table;
  const { fullness, drawn } = fullnesses(table);
  const topHalf = mm`Insert top, each half: fullness ${drawn} x neckline ${place.neckline}`;
  const gathered = mm`Insert bottom between its notches, each half: fullness ${fullness} x (seam ${place.underBust} - ${rules.flatEnds}); the rest of the seam is sewn flat`;
  const bottomHalf = mm`Insert bottom, each half: bottom between the notches ${gathered} + ${rules.flatEnds}`;
  const lean = angle`Insert sides lean: arc sine of ((top ${topHalf} - bottom ${bottomHalf}) / about its length ${place.side}, at least -1, at most 1); no more than ${rules.mostLean} either way`;
  refuseLean(table, lean.value, { fullness, drawn });
  const [at, down] = [point(topHalf.value, 0), point(topHalf.value, place.side.value)];
  for (const each of [lean, rules.mostLean.quantity])
    table.angleAt('insert', each, at, down, turnedAbout(down, at, each.value));

  say`Insert, slashed and spread: cut into ${choice.slashLines} + 1 strips a half and spread evenly until its bottom measures ${bottomHalf} mm and its top ${topHalf} mm; the edges are blended [slash and spread in parallel, common practice, no source]`;
  const onPaper = (name: string, x: number, y: number) => table.point('insert', name, point(x, y));
  onPaper('neckline at centre front', 0, 0);
  const top = sketch.fixed('insert top', onPaper('neckline at the side', topHalf.value, 0));
  const centreFoot = sketch.fixed(
    'insert foot at centre front',
    onPaper('foot at centre front', 0, place.depth.value),
  );
  const foot = sketch.point('insert foot at the side', point(bottomHalf.value, place.depth.value));
  const side = sketch.line('insert side', top, foot);
  const bottom = sketch.curve('insert bottom', foot, centreFoot, {
    end: { angle: sketch.fixedAngle('insert bottom square to centre front', Math.PI) },
  });
  table.points('insert', { [foot]: 'foot at the side' });
  table.line('insert', 'fold at the neckline', straight(point(0, 0), point(topHalf.value, 0)));
  table.line('insert', 'centre front', straight(point(0, 0), point(0, place.depth.value)));
  table.curves('insert', [side, bottom]);
  table.dimension('insert', topHalf, 'fold at the neckline');
  table.dimension('insert', place.depth, 'centre front');
  table.dimension('insert', bottomHalf, bottom);
  fairLine(sketch, bottom);
  sketch.relation(
    sewnEqual('insert side equals the side front', [side], place.sideFront),
    isLong('insert bottom gathers into the under-bust seam', [bottom], bottomHalf.value),
  );
  return { bottom, side, top, foot, fullness, drawn, place };
}

/** Refuses sides that lean (radians) so far that the side fronts would have to bulge to be as long. */
function refuseLean(
  { refuse }: InsertTable,
  lean: number,
  { fullness, drawn }: Pick<InsertLines, 'fullness' | 'drawn'>,
): void {
  if (Math.abs(lean) <= rules.mostLean.quantity.value) return;
  const [more, less] =
    lean > 0 ? ['necklineFullness', 'insertFullness'] : ['insertFullness', 'necklineFullness'];
  refuse({
    code: 'fullness-out-of-reach',
    severity: 'error',
    path: more,
    value: (lean * 180) / Math.PI,
    limits: { min: -rules.mostLean.value, max: rules.mostLean.value, unit: 'degrees' },
    message: `An insert drawn up ${figure(drawn.value)} to 1 along the neckline and gathered ${figure(fullness.value)} to 1 under the bust cannot be cut: its sides would lean by ${degrees(Math.abs(lean))}. Choose less ${more}, or more ${less}.`,
  });
}
