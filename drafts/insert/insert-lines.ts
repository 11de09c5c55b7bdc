import type { Body } from '../../engine/body/body.ts';
import { lengthOf, type SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { distance, point } from '../../engine/geometry/point.ts';
import { type ConstructionLog, degrees, figure } from '../../engine/pattern/construction-log.ts';
import type { FrontFoundation } from '../bodice/front-foundation.ts';
import type { FrontLines } from '../bodice/front-lines.ts';
import type { Levels } from '../bodice/levels.ts';
import { fairLine } from '../fair-lines.ts';
import type { InsertStyling } from './choices.ts';
import { insertRules as rules } from './rules.ts';

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
export function planInsert(
  sketch: SketchBuilder,
  body: Body,
  styling: InsertStyling,
  levels: Levels,
  front: FrontFoundation,
  frontLines: FrontLines,
  log: ConstructionLog,
): InsertLines {
  const cup = body.size.bustGirth - body.size.underBustGirth;
  const byCup = (least: number, perMm: number): number =>
    Math.min(least + perMm * Math.max(0, cup - rules.leastCup.value), rules.mostFullness.value);
  const fullness =
    styling.insertFullness === 'auto'
      ? log.ratio(
          'Insert fullness under the bust',
          `${rules.leastFullness.value} + ${rules.fullnessPerMm.value} x (cup difference ${figure(cup)} - ${rules.leastCup.value})`,
          byCup(rules.leastFullness.value, rules.fullnessPerMm.value),
          rules.fullnessPerMm,
        )
      : log.ratio('Insert fullness under the bust', 'as chosen', styling.insertFullness, 'styling');
  const drawn =
    styling.necklineFullness === 'auto'
      ? log.ratio(
          'Insert fullness along the neckline',
          `${rules.leastDrawn.value} + ${rules.drawnPerMm.value} x (cup difference ${figure(cup)} - ${rules.leastCup.value})`,
          byCup(rules.leastDrawn.value, rules.drawnPerMm.value),
          rules.drawnPerMm,
        )
      : log.ratio('Insert fullness along the neckline', 'as chosen', styling.necklineFullness, 'styling');

  const necklineHalf = front.strap.inner.x;
  const centreDepth = log.mm(
    'Insert length at centre front',
    'from the neckline to the under-bust level',
    levels.underBust - front.strap.inner.y,
    'construction',
  );
  const top = sketch.fixed('insert top', point(drawn * necklineHalf, 0));
  const centreFoot = sketch.fixed('insert foot at centre front', point(0, centreDepth));
  const seam = front.underBust.centre.x;
  const flat = rules.flatEnds.value;
  const gathered = log.mm(
    'Insert bottom between its notches, each half',
    `${figure(fullness)} x (seam ${figure(seam)} - ${flat} sewn flat at its end)`,
    fullness * (seam - flat),
    rules.flatEnds,
  );
  const sideLength = distance(front.underBust.side, front.pivot) + distance(front.pivot, front.strapInner);
  const lean = log.angle(
    'Insert sides lean',
    `asin((top ${figure(drawn * necklineHalf)} - bottom ${figure(gathered + flat)}) / about ${figure(sideLength)})`,
    Math.asin(Math.min(1, Math.max(-1, (drawn * necklineHalf - gathered - flat) / sideLength))),
    rules.mostLean,
  );
  refuseLean(lean, { fullness, drawn }, log);
  const foot = sketch.point('insert foot at the side', point(gathered + flat, centreDepth));
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
      mm: gathered + flat,
    },
  );
  log.say(
    'Insert, slashed and spread',
    `cut into ${styling.slashLines + 1} strips a half and spread evenly until the bottom measures ${figure(gathered + flat)} mm for ${figure(seam)} mm of seam and the top ${figure(drawn * necklineHalf)} mm for ${figure(necklineHalf)} mm of neckline; the edges are blended`,
    'slash and spread in parallel, common practice, no source',
  );
  return { bottom, side, top, foot, fullness, drawn, necklineHalf, bustHalf: front.pivot.x };
}

/** Refuses sides that lean (radians) so far that the side fronts would have to bulge to be as long. */
function refuseLean(
  lean: number,
  { fullness, drawn }: Pick<InsertLines, 'fullness' | 'drawn'>,
  log: ConstructionLog,
): void {
  const most = (rules.mostLean.value * Math.PI) / 180;
  if (Math.abs(lean) <= most) return;
  const [more, less] =
    lean > 0 ? ['necklineFullness', 'insertFullness'] : ['insertFullness', 'necklineFullness'];
  log.refuse({
    code: 'fullness-out-of-reach',
    severity: 'error',
    path: more,
    value: (lean * 180) / Math.PI,
    limits: { min: -rules.mostLean.value, max: rules.mostLean.value, unit: 'degrees' },
    message: `An insert drawn up ${figure(drawn)} to 1 along the neckline and gathered ${figure(fullness)} to 1 under the bust cannot be cut: its sides would lean by ${degrees(Math.abs(lean))}. Choose less ${more}, or more ${less}.`,
  });
}
