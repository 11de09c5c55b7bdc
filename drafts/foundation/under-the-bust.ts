import { point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Levels } from './levels.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';
import { waistRules } from './waist-rules.ts';

/** How far below the back neck point the front has its under-bust seam and its waist, at the princess seam; its waist at the centre too. */
export interface FrontLevels {
  readonly underBust: Mm;
  readonly waist: Mm;
  readonly waistAtCentre: Mm;
}

/**
 * Lets the front follow the breast. A tape runs straight from the bust point to the waist, and the levels come from it; cloth
 * with a seam under the bust goes down the breast to its lower edge, and from there down the ribs and over the belly. So that
 * seam lies where the breast ends along the cloth, and the waist dips, the more the further the belly stands out below the
 * ribs; at the side seam both are back where the back has them.
 */
export function drawUnderTheBust(table: FoundationTable, levels: Levels): FrontLevels {
  const { sideWaist, belly } = levels;
  const underBust = lowerEdge(table, levels);
  const dips = table.mm`Front waist dips: ${waistRules.frontDips} + ${waistRules.frontDipsPerMm} of belly ${belly}, at most ${waistRules.frontDipsMost}`;
  const lower = table.mm`Front waist level: waist level at the side seam ${sideWaist} + ${dips}`;
  const waistAtCentre = table.mm`Front waist level at the centre front: ${lower} + ${waistRules.centreDips}`;
  for (const level of [underBust, lower, waistAtCentre])
    table.dimension('front', level, point(0, 0), point(0, level.value));
  table.dimension('front', dips, point(0, sideWaist.value), point(0, lower.value));
  return { underBust, waist: lower, waistAtCentre };
}

/** The level of the breast's lower edge, or of the seam that was chosen. */
function lowerEdge({ size, choice, mm, dimension }: FoundationTable, levels: Levels): Mm {
  const { bust, waist } = levels;
  if (choice.underBustDrop !== 'auto') return levels.underBust;
  const down = mm`Front under-bust seam below the bust level: ${rules.breastLeast} + ${rules.breastPerCup} of (bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth}) + ${rules.breastFullShare} of (bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth} - ${rules.breastFull}, at least 0), at most ${rules.breastLowest} of (waist level ${waist} - bust level ${bust}); with what the princess edge runs aside it is as long as the breast`;
  const level = mm`Front under-bust level: bust level ${bust} + ${down}`;
  dimension('front', down, point(0, bust.value), point(0, level.value));
  return level;
}
