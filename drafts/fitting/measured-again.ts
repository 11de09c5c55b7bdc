import type { MeasurementName } from '../../engine/body/body.ts';
import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Choice } from '../../engine/pattern/styling.ts';

type LengthName = Exclude<MeasurementName, 'shoulderSlope'>;

/**
 * The table with the body as the fitting found it: what a fitter says of the body rather than of a seam is a
 * measurement taken again. The other changes are for the parts of the garment they belong to.
 */
export function measuredAgain<Choices extends readonly Choice[]>(
  table: DraftingTable<Choices>,
): DraftingTable<Choices> {
  const { size, mm, fitted } = table;
  table.heading('What the fitting corrected');
  const again: Partial<Record<LengthName, Mm>> = {};
  const add = (change: string, name: LengthName, more: Mm, less?: Mm): void => {
    if (more.value !== 0) again[name] = mm`Fitting, ${change}: ${size[name].name} ${size[name]} + ${more}`;
    if (less && less.value !== 0)
      again[name] = mm`Fitting, ${change}: ${size[name].name} ${again[name] ?? size[name]} - ${less}`;
  };
  add('bust point', 'neckShoulderPointToBustPoint', fitted('lower bust point'), fitted('raise bust point'));
  add('round back', 'backNeckPointToWaist', fitted('round back'));
  add('round back', 'scyeDepth', fitted('round back'));
  add('broad back', 'acrossBackWidth', fitted('broad back'), fitted('narrow back'));
  add('more upper arm', 'upperArmGirth', fitted('more upper arm'));
  const numbers = Object.fromEntries(Object.entries(again).map(([name, { value }]) => [name, value]));
  return {
    ...table,
    body: { ...table.body, size: { ...table.body.size, ...numbers } },
    size: { ...size, ...again },
  };
}
