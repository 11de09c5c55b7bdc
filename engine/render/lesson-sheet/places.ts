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
const placeWords = ({ x, y }: Point, units: Unit): string =>
  `${figure(x, units)} ${x < 0 ? 'the other way' : 'out'}, ${figure(y, units)} ${y < 0 ? 'up' : 'down'}`;

/** The same in a row of many, which says once that they lie so far out by so far down: `131.1 by 17.9`. */
export const placeInRow = ({ x, y }: Point, units: Unit): string =>
  `${figure(x, units)}${x < 0 ? ' the other way' : ''} by ${figure(y, units)}${y < 0 ? ' up' : ''}`;

const figure = (mm: number, units: Unit): string => lengthFigure(Math.abs(mm), units, SIXTEENTHS);
