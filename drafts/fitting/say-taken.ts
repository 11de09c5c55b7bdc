import { changeWords, type FittedLevel } from '../../engine/body/fitting.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import { type Mm, quantity } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/text/figure.ts';

/** What these need of a table, whatever its choices. */
type Table = Pick<DraftingTable<readonly []>, 'body' | 'mm' | 'say' | 'remark'>;

/** Says what was pinned at the seams at these levels. */
export function sayPinned({ body, say }: Pick<Table, 'body' | 'say'>, levels: readonly FittedLevel[]): void {
  for (const change of body.fitting) {
    if (!('seam' in change) || !levels.includes(change.level)) continue;
    const words = changeWords(change);
    say`Fitting, ${words}: ${quantity(change.mm, 'mm', words, { kind: 'fitting' })} mm on each layer`;
  }
}

/** The finished girth that the fitting left of a drafted one by intent, told to the dressmaker where it changed; else the drafted. */
export function sayTaken(
  table: Omit<Table, 'body' | 'say'>,
  level: FittedLevel,
  drafted: Mm,
  body: Mm,
  taken: Mm,
): Mm {
  const less = taken.value;
  if (less === 0) return drafted;
  const finished = table.mm`Fitting, finished girth at the ${level}: ${drafted} - ${taken}; both layers, left and right`;
  const change = `The fitting makes the ${level} ${figure(Math.abs(less))} mm ${less > 0 ? 'smaller' : 'larger'}: ${figure(finished.value)} mm finished, where the body has ${figure(body.value)} mm.`;
  const tight = finished.value < body.value;
  table.remark({
    code: tight ? 'fitting-tighter-than-body' : 'fitting-changes-girth',
    severity: tight ? 'warning' : 'note',
    path: level,
    value: finished.value,
    message: tight ? `${change} That is smaller than the body: measure it again.` : change,
  });
  return finished;
}
