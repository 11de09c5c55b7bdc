import { type Point, point } from '../../engine/geometry/point.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import { figure } from '../../engine/pattern/written.ts';
import type { FoundationTable } from '../foundation/foundation.ts';

/**
 * Moves the shoulder end of a strap nearer to its panel by what the fitting shortened, half before and half behind the
 * shoulder, and forward by what the shoulder lies further forward.
 */
export function shortenedStrap(
  table: FoundationTable,
  part: 'front' | 'back',
  slope: number,
): (p: Point) => Point {
  const shorter = (table.fitted('shorten strap').value - table.fitted('lengthen strap').value) / 2;
  const forward = table.fitted('forward shoulder').value * (part === 'front' ? 1 : -1);
  const less = shorter + forward;
  if (less === 0) return (p) => p;
  const down = slope + Math.PI / 2;
  const moved: Mm = table.measured(
    `Fitting, ${part} of the shoulder lies lower by`,
    `${figure(shorter)} shorter, ${figure(forward)} for the forward shoulder`,
    less,
    table.fitted('shorten strap'),
    table.fitted('lengthen strap'),
    table.fitted('forward shoulder'),
  );
  return (p) => point(p.x + moved.value * Math.cos(down), p.y + moved.value * Math.sin(down));
}
