import { fixed } from './figure.ts';
import type { Unit } from './units.ts';

/** Cloth is sold by the tenth of a metre, or by the eighth of a yard (common practice, no source), mm. */
const tenthOfMetre = 100;
const eighthOfYard = 114.3;
const yard = 8 * eighthOfYard;

/** A length of cloth (mm) rounded up to what is sold, in the units of who measures in `unit`. */
export function lengthToBuy(length: number, unit: Unit): string {
  if (unit !== 'in') return `${fixed(Math.ceil(length / tenthOfMetre) / 10, 1)} m`;
  const eighths = Math.ceil(length / eighthOfYard);
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  const parts = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
  return `${[whole > 0 || rest === 0 ? String(whole) : '', parts[rest] ?? ''].filter(Boolean).join(' ')} yd`;
}

/** A length of cloth (mm) that no lay goes below, rounded down to a hundredth of a metre or of a yard. */
export const lengthAtLeast = (length: number, unit: Unit): string =>
  unit === 'in'
    ? `${(Math.floor((100 * length) / yard) / 100).toFixed(2)} yd`
    : `${(Math.floor(length / 10) / 100).toFixed(2)} m`;

/** A length of thread (mm) rounded up to tens of metres or yards. */
export const threadToBuy = (length: number, unit: Unit): string =>
  unit === 'in' ? `${10 * Math.ceil(length / (10 * yard))} yd` : `${10 * Math.ceil(length / 10_000)} m`;
