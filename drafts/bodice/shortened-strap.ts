import { moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { scaled, unit } from '../../engine/geometry/vector.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { FoundationTable } from '../foundation/table.ts';

/**
 * Moves the shoulder end of a strap along it, from `shoulder` towards the `corner` on its panel: by what the fitting
 * shortened, half before and half behind the shoulder, and by what the shoulder lies further forward; and away from it by
 * what the strap was drafted `longer` than its way.
 */
export function shortenedStrap(
  table: FoundationTable,
  part: 'front' | 'back',
  shoulder: Point,
  corner: Point,
  longer: Mm | undefined,
): (p: Point) => Point {
  const fitted = fittedShorter(table, part);
  const by = fitted - (longer?.value ?? 0);
  const way = unit(vectorBetween(shoulder, corner));
  const along = scaled(way, by);
  if (longer) table.dimension(part, longer, moved(shoulder, scaled(way, fitted)), moved(shoulder, along));
  return (p) => (by === 0 ? p : moved(p, along));
}

/** What the fitting takes from a strap before or behind the shoulder, mm. */
function fittedShorter(table: FoundationTable, part: 'front' | 'back'): number {
  const shorter = table.fitted('shorten strap');
  const longer = table.fitted('lengthen strap');
  const forward = table.fitted('forward shoulder');
  if ([shorter, longer, forward].every(({ value }) => value === 0)) return 0;
  const by =
    part === 'front'
      ? table.mm`Fitting, front strap is shorter by: (shortened ${shorter} - lengthened ${longer}) / 2 + forward shoulder ${forward}`
      : table.mm`Fitting, back strap is shorter by: (shortened ${shorter} - lengthened ${longer}) / 2 - forward shoulder ${forward}`;
  return by.value;
}
