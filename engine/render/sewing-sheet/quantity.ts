import type { Notion } from '../../pattern/garment.ts';
import { wholeLength } from '../../text/on-one-line.ts';
import type { Unit } from '../../text/units.ts';

/** How many of a notion, and how long where it is bought by length. */
export const quantity = ({ count, length }: Notion, units: Unit): string =>
  length > 0 ? `${count} × ${wholeLength(length, units)}` : String(count);
