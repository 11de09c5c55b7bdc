import { moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { scaled, unit } from '../../engine/geometry/vector.ts';
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
  const shorter = table.fitted('shorten strap');
  const longer = table.fitted('lengthen strap');
  const forward = table.fitted('forward shoulder');
  if ([shorter, longer, forward].every(({ value }) => value === 0)) return (p) => p;
  const by =
    part === 'front'
      ? table.mm`Fitting, front strap is shorter by: (shortened ${shorter} - lengthened ${longer}) / 2 + forward shoulder ${forward}`
      : table.mm`Fitting, back strap is shorter by: (shortened ${shorter} - lengthened ${longer}) / 2 - forward shoulder ${forward}`;
  const along = scaled(unit(vectorBetween(shoulder, corner)), by.value);
  return (p) => moved(p, along);
}
