import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Armhole, HalfArmhole } from './armhole.ts';
import type { SleeveTable } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

/** The room that a sleeve has around the upper arm: as chosen, or the usual. */
export const usualArmEase = (table: SleeveTable): Mm =>
  table.choice.upperArmEase === 'auto'
    ? table.mm`Ease at the upper arm: ${rules.armEase}`
    : table.mm`Ease at the upper arm: ${table.choice.upperArmEase}; as chosen`;

/**
 * The same in a plain sleeve, whose cap is spread by nothing: its crown (mm from notch to notch) must span what the arm
 * and its ease leave between the notches, so an arm that is full for its armhole gets less room.
 */
export function plainArmEase(table: SleeveTable, armhole: Armhole, crown: Mm): Mm {
  if (table.choice.upperArmEase !== 'auto') return usualArmEase(table);
  const below = table.measured(
    'Armhole below the notches, across',
    'front and back, on the drawing',
    across(armhole.front) + across(armhole.back),
    crown,
  );
  const widest = table.mm`Widest sleeve that the crown spans: crown ${crown} / ${rules.crownToSpan} + armhole below the notches ${below}`;
  return table.mm`Ease at the upper arm: ${rules.armEase}, at most widest sleeve ${widest} - upper arm girth ${table.size.upperArmGirth}, at least ${rules.leastArmEase}`;
}

/** How far a notch lies from the underarm, across, mm. */
const across = ({ flat }: HalfArmhole): number => Math.abs(flat[0]?.from.x ?? 0);
