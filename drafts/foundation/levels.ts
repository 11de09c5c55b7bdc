import { point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';
import { waistRules } from './waist-rules.ts';

/** The level lines shared by front and back: how far each lies below the back neck point. */
export interface Levels {
  readonly across: Mm;
  readonly underarm: Mm;
  readonly bust: Mm;
  readonly underBust: Mm;
  readonly waist: Mm;
  /** How far the belly stands out. */
  readonly belly: Mm;
  /** The waist at the side seam. */
  readonly sideWaist: Mm;
}

/**
 * Draws the level lines across the paper. Without sleeves the underarm lies higher. What a round back needs lies above the
 * across-back level: from there down nothing changes, and the armscye is no smaller for its depth.
 */
export function drawLevels(table: FoundationTable, sleeves: boolean): Levels {
  const { size, choice } = table;
  const waist = table.mm`Waist level: back neck point to waist ${size.backNeckPointToWaist}; measured down the centre back`;
  const bustToWaist = table.mm`Bust point to waist: neck over bust to waist ${size.neckShoulderPointToWaist} - neck to bust point ${size.neckShoulderPointToBustPoint}`;
  const bust = table.mm`Bust level: waist level ${waist} - ${bustToWaist}`;
  const roundBack = table.fitted('round back');
  const isRound = roundBack.value !== 0;
  const depth = isRound
    ? table.mm`Fitting, scye depth without the round back: scye depth ${size.scyeDepth} - round back ${roundBack}`
    : size.scyeDepth;
  const acrossDrafted = table.mm`Across-back level: ${rules.acrossLevel} of scye depth ${depth}`;
  const across = isRound
    ? table.mm`Fitting, across-back level: ${acrossDrafted} + round back ${roundBack}`
    : acrossDrafted;

  const larger = table.mm`Armscye longer than its depth foretells: armscye girth ${size.armscyeGirth} - ${rules.armscyeToDepth} x scye depth ${depth}`;
  const drop = table.mm`Underarm below the scye depth: ${rules.underarmDrop} + ${rules.armscyeShare} of what it is longer ${larger}, at least ${rules.leastDrop}, at most ${rules.greatestDrop}`;
  const underarm = sleeves
    ? table.mm`Underarm level: scye depth ${size.scyeDepth} + drop ${drop}, at most bust level ${bust} - ${rules.underarmAboveBust}`
    : table.mm`Underarm level: scye depth ${size.scyeDepth} + drop ${drop} - ${rules.sleevelessRaise}, at most bust level ${bust} - ${rules.underarmAboveBust}; without sleeves`;

  const below =
    choice.underBustDrop === 'auto'
      ? table.mm`Under-bust seam below the bust point: ${rules.underBustShare} of bust point to waist ${bustToWaist}, at most ${rules.underBustLimit}`
      : table.mm`Under-bust seam below the bust point: ${choice.underBustDrop}; as chosen`;
  const underBust = table.mm`Under-bust level: bust level ${bust} + drop ${below}`;
  const beyond = table.mm`Waist stands out: ${waistRules.standsOut} of (waist girth ${size.waistGirth} + ${waistRules.ribsBelowChest} - upper chest girth ${size.upperChestGirth})`;
  const belly = table.mm`Belly: (waist stands out ${beyond} + root of (square of waist stands out ${beyond} + square of ${waistRules.bellyRounds})) / 2`;
  const sideDips = table.mm`Waist dips at the side seam: ${waistRules.sideDips} + ${waistRules.sideDipsPerMm} of belly ${belly}, at most ${waistRules.sideDipsMost}`;
  const sideWaist = table.mm`Waist level at the side seam: waist level ${waist} + ${sideDips}`;
  for (const level of [size.backNeckPointToWaist, size.scyeDepth, waist, bust, across, underarm, underBust])
    table.dimension('back', level, point(0, 0), point(0, level.value));
  table.dimension('back', bustToWaist, point(0, bust.value), point(0, waist.value));
  table.dimension('back', below, point(0, bust.value), point(0, underBust.value));
  return { across, underarm, bust, underBust, waist, sideWaist, belly };
}
