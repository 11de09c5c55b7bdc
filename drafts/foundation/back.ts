import { type Point, point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { straight } from '../piece-edges.ts';
import type { Levels } from './levels.ts';
import { type BackNeck, drawBackShoulder, type Shoulder } from './neck-and-shoulder.ts';
import { foundationRules as rules } from './rules.ts';
import { drawSide, type SideSeam } from './side-seam.ts';
import type { FoundationTable } from './table.ts';
import type { Widths } from './take-in.ts';

/** The back of the foundation. Centre back is x = 0, the back neck point is the origin. */
export interface BackFoundation {
  readonly neck: BackNeck;
  readonly shoulder: Shoulder;
  /** The armhole's innermost place, between the folds of the arms. */
  readonly across: Point;
  readonly side: SideSeam;
  /** The centre back seam at the waist. */
  readonly centreWaist: Point;
  /** How far the centre back seam has come in at a level (mm), mm. */
  readonly centreBackAt: (level: number) => number;
  /** The princess line at bust level, and x of it at the waist before anything is taken in. */
  readonly blade: Point;
  readonly princessAtWaist: Mm;
}

/** Draws the back: neck, shoulder, centre back, across back and side seam, and where its princess line runs. */
export function drawBack(
  table: FoundationTable,
  neck: BackNeck,
  levels: Levels,
  widths: Widths,
): BackFoundation {
  const { size } = table;
  const shoulder = drawBackShoulder(table, neck);

  const acrossBack = table.mm`Half across back: across back width ${size.acrossBackWidth} / 2 + ${rules.acrossBackEase}`;
  const across = table.point('back', 'across back', point(acrossBack.value, levels.across.value));
  table.line('back', 'across-back level', straight(point(0, levels.across.value), across));
  table.dimension('back', acrossBack, point(0, across.y), across);

  const centreBackAt = (level: number): number =>
    (widths.centreBackAtWaist.value * level) / levels.waist.value;
  const sway = table.fitted('sway back');
  const centreLevel =
    sway.value === 0
      ? levels.waist
      : table.mm`Waist level at the centre back: ${levels.waist} - sway back ${sway}; rising to nothing at the side seam`;
  const centreWaist = point(centreBackAt(centreLevel.value), centreLevel.value);
  table.say`Centre back seam: straight from the back neck point to the waist, in there by ${widths.centreBackAtWaist} mm`;
  table.point('back', 'centre back at waist', centreWaist);
  table.line('back', 'centre back', straight(point(0, 0), centreWaist));
  const takenAt = point(widths.centreBackAtWaist.value, levels.waist.value);
  table.dimension('back', widths.centreBackAtWaist, point(0, takenAt.y), takenAt);

  const atBust = table.mm`Back side seam at bust level: centre back seam ${widths.centreBackAtWaist} x bust level ${levels.bust} / waist level ${levels.waist} + back width ${widths.back} + back princess seam ${widths.backPrincess.bust}`;
  const side = drawSide(table, 'back', atBust, levels, widths);

  const { drafted } = widths;
  const inAtBust = table.mm`Centre back seam at bust level: centre back takes in ${drafted.centreBackAtWaist} x bust level ${levels.bust} / waist level ${levels.waist}`;
  const princessAtBust = table.mm`Back princess line at bust level: centre back seam ${inAtBust} + ${rules.backPrincess} of back width ${drafted.back}`;
  const princessAtWaist = table.mm`Back princess line at the waist: princess line at bust level ${princessAtBust} - ${rules.backPrincessLean} of back width ${drafted.back}`;
  const blade = table.point(
    'back',
    'princess line at bust level',
    point(princessAtBust.value, levels.bust.value),
  );
  const bustAt = (x: number): Point => point(x, levels.bust.value);
  table.dimension('back', inAtBust, bustAt(0), bustAt(inAtBust.value));
  table.dimension('back', princessAtBust, bustAt(0), blade);
  const waistAt = (x: number): Point => point(x, levels.waist.value);
  table.dimension('back', princessAtWaist, waistAt(0), waistAt(princessAtWaist.value));
  return { neck, shoulder, across, side, centreWaist, centreBackAt, blade, princessAtWaist };
}
