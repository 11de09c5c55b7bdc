import { bodiceChoices } from '../../drafts/bodice/choices.ts';
import { drawStyleLines } from '../../drafts/bodice/necklines.ts';
import { chosenStyle } from '../../drafts/bodice/style.ts';
import type { StyleLines } from '../../drafts/bodice/style-lines.ts';
import { measuredAgain } from '../../drafts/fitting/measured-again.ts';
import { drawFoundation } from '../../drafts/foundation/draw-foundation.ts';
import type { Foundation } from '../../drafts/foundation/foundation.ts';
import { drawNeckBase } from '../../drafts/trial/neck-base.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { draftingTable } from '../../engine/pattern/drafting-table.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';

/** What the bodice of a garment is drawn on before its curves: its foundation, and the style lines on that. */
export function drawnOn({ body, styling, garment }: Evaluation): {
  readonly foundation: Foundation;
  readonly lines: StyleLines;
} {
  const chosen = styling as StylingOf<typeof bodiceChoices>;
  const table = measuredAgain(draftingTable(body, bodiceChoices, chosen));
  if (garment.name === 'trial') {
    const foundation = drawFoundation(table, { sleeves: true, straps: false });
    return { foundation, lines: drawNeckBase(table, foundation) };
  }
  const sleeves = styling.sleeve !== undefined && styling.sleeve !== 'none';
  const style = chosenStyle(table);
  const foundation = drawFoundation(table, { sleeves, straps: style.shoulder === 'strap' });
  return { foundation, lines: drawStyleLines(table, foundation, style) };
}
