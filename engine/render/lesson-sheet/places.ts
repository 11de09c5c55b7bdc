import type { PlacedPoint, Step } from '../../pattern/garment.ts';
import { figure } from '../../pattern/written.ts';

/** Where the points lie that a step places, a line for each drawing: so far out, and so far down or up. */
export function placesOf({ draws }: Step): readonly string[] {
  const points = draws?.points ?? [];
  const drawings = [...new Set(points.map(({ on }) => on))];
  return drawings.map((on) => {
    const places = points.filter((each) => each.on === on).map(placeOf);
    return `On the ${on}: ${places.join('; ')}.`;
  });
}

const placeOf = ({ name, at }: PlacedPoint): string => {
  const out = at.x < 0 ? `${figure(-at.x)} the other way` : `${figure(at.x)} out`;
  return `${name} ${out}, ${figure(Math.abs(at.y))} ${at.y < 0 ? 'up' : 'down'}`;
};
