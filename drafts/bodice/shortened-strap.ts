import { moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { scaled, unit } from '../../engine/geometry/vector.ts';
import { figure } from '../../engine/text/figure.ts';
import type { FoundationTable } from '../foundation/table.ts';

/**
 * Moves the shoulder end of a strap along it, from `shoulder` towards the `corner` on its panel: by what the fitting
 * shortened, half before and half behind the shoulder, and by what the shoulder lies further forward.
 */
export function shortenedStrap(
  table: FoundationTable,
  part: 'front' | 'back',
  shoulder: Point,
  corner: Point,
): (p: Point) => Point {
  const shorter = (table.fitted('shorten strap').value - table.fitted('lengthen strap').value) / 2;
  const forward = table.fitted('forward shoulder').value * (part === 'front' ? 1 : -1);
  const less = shorter + forward;
  if (less === 0) return (p) => p;
  const by = table.measured(
    `Fitting, ${part} strap is shorter by`,
    `${figure(shorter)} mm shorter, ${figure(forward)} mm for the forward shoulder`,
    less,
    table.fitted('shorten strap'),
    table.fitted('lengthen strap'),
    table.fitted('forward shoulder'),
  );
  const along = scaled(unit(vectorBetween(shoulder, corner)), by.value);
  return (p) => moved(p, along);
}
