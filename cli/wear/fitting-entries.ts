import type { FittingChange } from '../../engine/body/fitting.ts';
import { fixed } from '../../engine/text/figure.ts';
import { millimetres, type Unit } from '../../engine/text/units.ts';

/** Changes of a fitting as a file of measurements in this unit holds them. */
export const fittingEntries = (
  fitting: readonly FittingChange[],
  unit: Unit,
): readonly Readonly<Record<string, string | number>>[] => fitting.map((change) => entryOf(change, unit));

/** Digits behind the point: no tape is read finer. */
const digits: Readonly<Record<Unit, number>> = { mm: 1, cm: 2, in: 3 };

function entryOf(change: FittingChange, unit: Unit): Readonly<Record<string, string | number>> {
  const amount = Number(fixed(change.mm / millimetres[unit], digits[unit]));
  if ('seam' in change) return { [change.kind]: change.seam, level: change.level, by: amount };
  return { [change.kind]: amount, ...(change.side && { side: change.side }) };
}
