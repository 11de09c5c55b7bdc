import { moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { scaled, unit } from '../../engine/geometry/vector.ts';
import type { FoundationTable } from '../foundation/table.ts';
import { bodiceRules as rules } from './rules.ts';

/**
 * Moves the shoulder end of a strap along it, from `shoulder` towards the `corner` on its panel: away from it by what a strap
 * without sleeves is longer than its way over the shoulder, half before and half behind; nearer by what the fitting
 * shortened, in halves too, and by what the shoulder lies further forward.
 */
export function shortenedStrap(
  table: FoundationTable,
  part: 'front' | 'back',
  shoulder: Point,
  corner: Point,
  sleeves: boolean,
): (p: Point) => Point {
  const { size, mm } = table;
  const along = unit(vectorBetween(shoulder, corner));
  const gives = sleeves
    ? 0
    : mm`${part === 'front' ? 'Front' : 'Back'} strap is longer than its way by: ${rules.strapGives} of (upper chest girth ${size.upperChestGirth} - ${rules.strapGivesFrom}) / 2; without sleeves`
        .value;
  const by = fittedShorter(table, part) - gives;
  return (p) => (by === 0 ? p : moved(p, scaled(along, by)));
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
