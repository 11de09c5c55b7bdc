import { drawBack } from './back.ts';
import type { Foundation } from './foundation.ts';
import { drawFront } from './front.ts';
import { refuseImpossible } from './impossible.ts';
import { drawLevels } from './levels.ts';
import { markWidths } from './mark-widths.ts';
import { drawBackNeck } from './neck-and-shoulder.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';
import { takeIn } from './take-in.ts';
import { shareWidths } from './widths.ts';

/** What hangs from the foundation's armholes and shoulders. */
export interface FoundationFor {
  readonly sleeves: boolean;
  readonly straps: boolean;
}

/** Draws the foundation from every measurement of the upper body. */
export function drawFoundation(table: FoundationTable, { sleeves, straps }: FoundationFor): Foundation {
  const { size, choice, styling } = table;
  table.heading('Levels');
  const levels = drawLevels(table, sleeves);
  table.heading('Widths');
  const usual = sleeves ? rules.bustEase : rules.sleevelessBustEase;
  const bustEase =
    choice.bustEase === 'auto'
      ? table.mm`Ease at the bust: ${usual}`
      : table.mm`Ease at the bust: ${choice.bustEase}; as chosen`;
  const ease = { bust: bustEase.value, underBust: styling.underBustEase, waist: styling.waistEase };
  const shared = shareWidths(table, levels, bustEase);
  const girths = {
    bust: table.mm`Bust, finished: bust girth ${size.bustGirth} + ${bustEase}`,
    underBust: table.mm`Under-bust, finished: under-bust girth ${size.underBustGirth} + ${choice.underBustEase}`,
    waist: table.mm`Waist, finished: waist girth ${size.waistGirth} + ${choice.waistEase}`,
  };
  const widths = takeIn(table, shared, levels, girths);
  table.heading('The back');
  const neck = drawBackNeck(table);
  const back = drawBack(table, neck, levels, widths);
  table.heading('The front');
  const held = straps && !sleeves;
  const front = drawFront(table, { neck, shoulder: back.shoulder }, levels, widths, held);
  const foundation = { sleeves, held, levels, widths, back, front, ease };
  markWidths(table, foundation);
  refuseImpossible(table, foundation);
  return foundation;
}
