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
  const { size } = table;
  const { bust, waist } = levels;
  const underBust = lowered(table, levels, aside);
  const edge = table.mm`Princess edge down the breast, about: root of (square of (under-bust seam ${underBust} - bust level ${bust}) + square of what it runs aside ${aside})`;
  const most = table.mm`Most that the front dips at the waist: ${rules.frontDips} + ${rules.frontDipsPerMm} of (waist girth ${size.waistGirth} - under-bust girth ${size.underBustGirth}, at least 0), at most ${rules.frontDipsMost}`;
  const dips = table.mm`Front waist dips: under-bust seam ${underBust} - bust level ${bust} - edge ${edge} + ${rules.hollowPerCup} of (bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth} - ${rules.hollowFrom}), at least 0, at most ${most}`;
  const lower = table.mm`Front waist level: waist level ${waist} + ${dips}`;
  return { underBust, waist: lower };
}

/** The level of the breast's lower edge, where that lies lower than the under-bust level. */
function lowered({ size, choice, mm }: FoundationTable, levels: Levels, aside: Mm): Mm {
  const { bust, underBust, waist } = levels;
  if (choice.underBustDrop !== 'auto') return underBust;
  const down = mm`Breast's lower edge below the bust level: root of (square of (${rules.breastLeast} + ${rules.breastPerCup} of (bust girth ${size.bustGirth} - under-bust girth ${size.underBustGirth})) - square of what the edge runs aside ${aside}, at least 0), at most ${rules.breastLowest} of (waist level ${waist} - bust level ${bust})`;
  return mm`Front under-bust level: bust level ${bust} + ${down}, at least under-bust level ${underBust}`;
}
