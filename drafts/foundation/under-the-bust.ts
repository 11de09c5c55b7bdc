import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Levels } from './levels.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** How far below the back neck point the front has its under-bust seam and its waist, from the centre to the princess seam. */
export interface FrontLevels {
  readonly underBust: Mm;
  readonly waist: Mm;
}

/**
 * Lets the front follow the breast. A tape runs straight from the bust point to the waist, and the levels come from it;
 * cloth with a seam under the bust goes down the breast to its lower edge, and from there down the ribs. So where a breast
 * is full that seam lies lower than its level, and the front is longer; at the side seam both are back at their levels.
 * `aside` is how far the side front's edge runs to the side from bust level to under-bust level.
 */
export function drawUnderTheBust(table: FoundationTable, levels: Levels, aside: Mm): FrontLevels {
  const { size, choice } = table;
  const { bust, waist } = levels;
  const toWaist = table.mm`Bust level to waist: waist level ${waist} - bust level ${bust}`;
  const cup = table.mm`Cup of the front: bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth}`;
  const lower =
    choice.underBustDrop === 'auto' ? lowered(table, levels, cup, toWaist, aside) : levels.underBust;
  const edge = table.mm`Edge of the side front from bust level to under-bust seam, about: root of (square of (under-bust seam ${lower} - bust level ${bust}) + square of how far it runs aside ${aside})`;
  const hollow = table.mm`Hollow under the breast, longer than the tape over it: ${rules.hollowPerCup} of (cup difference ${cup} - ${rules.hollowFrom})`;
  const most = table.mm`Most that the front may dip at the waist: ${rules.frontDips} + ${rules.frontDipsPerMm} of (waist girth ${size.waistGirth} - under-bust girth ${size.underBustGirth}, at least 0), at most ${rules.frontDipsMost}`;
  const dips = table.mm`Front waist below the waist level: under-bust seam ${lower} - bust level ${bust} + hollow ${hollow} - edge ${edge}, at least 0, at most ${most}`;
  const lowerWaist = table.mm`Front waist level: waist level ${waist} + ${dips}; rising to the waist level at the side seam`;
  return { underBust: lower, waist: lowerWaist };
}

/** The level of the breast's lower edge, where that lies lower than the under-bust level. */
function lowered(table: FoundationTable, levels: Levels, cup: Mm, toWaist: Mm, aside: Mm): Mm {
  const { bust, underBust } = levels;
  const breast = table.mm`Breast from the bust point to its lower edge: ${rules.breastLeast} + ${rules.breastPerCup} of cup difference ${cup}`;
  const down = table.mm`Front under-bust seam below the bust level: root of (square of breast ${breast} - square of how far its edge runs aside ${aside}, at least 0), at most ${rules.breastLowest} of bust level to waist ${toWaist}`;
  return table.mm`Front under-bust level: bust level ${bust} + ${down}, at least under-bust level ${underBust}; rising to the under-bust level at the side seam`;
}
