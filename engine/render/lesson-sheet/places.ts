import type { PlacedPoint, Step } from '../../pattern/garment.ts';
import { lengthFigure, SIXTEENTHS, unbroken } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';

/** Where the points lie that a step places, a line for each drawing: so far out, and so far down or up. */
export function placesOf({ draws }: Step, units: Unit): readonly string[] {
  const points = draws?.points ?? [];
  const drawings = [...new Set(points.map(({ on }) => on))];
  return drawings.map((on) => {
    const places = points.filter((each) => each.on === on).map((each) => placeOf(each, units));
    return unbroken(`On the ${on}: ${places.join('; ')}.`);
  });
}

function placeOf({ name, at }: PlacedPoint, units: Unit): string {
  const figure = (mm: number): string => lengthFigure(Math.abs(mm), units, SIXTEENTHS);
  const out = at.x < 0 ? 'the other way' : 'out';
  return `${name} ${figure(at.x)} ${out}, ${figure(at.y)} ${at.y < 0 ? 'up' : 'down'}`;
}
