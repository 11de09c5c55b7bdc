import { fixed } from '../engine/text/figure.ts';
import type { Unit } from '../engine/text/units.ts';

/** Cloth is sold by the tenth of a metre, or by the eighth of a yard (common practice, no source), mm. */
const tenthOfMetre = 100;
const eighthOfYard = 114.3;

/** A length of cloth (mm) rounded up to what is sold, in the units of who measures in `unit`. */
export function lengthToBuy(length: number, unit: Unit): string {
  if (unit !== 'in') return `${fixed(Math.ceil(length / tenthOfMetre) / 10, 1)} m`;
  const eighths = Math.ceil(length / eighthOfYard);
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  const parts = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
  return `${[whole > 0 || rest === 0 ? String(whole) : '', parts[rest] ?? ''].filter(Boolean).join(' ')} yd`;
}
