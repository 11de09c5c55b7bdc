import type { Point } from '../../geometry/point.ts';
import type { Step } from '../../pattern/garment.ts';
import { lengthFigure, SIXTEENTHS, unbroken } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';

/** Where the points lie that a step places, a line for each drawing: so far out, and so far down or up. */
export function placesOf({ draws }: Step, units: Unit): readonly string[] {
  const points = draws?.points ?? [];
  const drawings = [...new Set(points.map(({ on }) => on))];
  return drawings.map((on) => {
    const places = points
      .filter((each) => each.on === on)
      .map(({ name, at }) => `${name} ${placeWords(at, units)}`);
    return unbroken(`On the ${on}: ${places.join('; ')}.`);
  });
}

/** A place on a drawing, from where its two first lines cross: `131.1 out, 17.9 down`. */
export function placeWords({ x, y }: Point, units: Unit): string {
  const figure = (mm: number): string => lengthFigure(Math.abs(mm), units, SIXTEENTHS);
  return `${figure(x)} ${x < 0 ? 'the other way' : 'out'}, ${figure(y)} ${y < 0 ? 'up' : 'down'}`;
}
