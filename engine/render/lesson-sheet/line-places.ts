import { chordPoints } from '../../geometry/chords.ts';
import { distance, type Point, point } from '../../geometry/point.ts';
import type { PlacedLine } from '../../pattern/garment.ts';
import { unbroken } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';
import type { Drawing } from './drawings.ts';
import { placeInRow } from './places.ts';

/**
 * Straight strokes from place to place stray by no more than this from a curve, mm. With what a place is rounded by (a tenth
 * of a mm) that is less than the half millimetre that a pencil line is wide.
 */
const STRAYS = 0.4;

/** A place as near as this to a point has been told with it, mm: what places are rounded to. */
const TOLD = 0.1;

/**
 * Where the lines run that a step draws, a sentence each, so that they can be drawn with a ruler: a curve by places close
 * enough to be joined with straight strokes, a straight line by its ends. A straight line between points that were placed
 * by name is told by them.
 */
export function linePlaces({ on, added, before }: Drawing, units: Unit): readonly string[] {
  const named = [...before.points, ...added.points].map(({ at }) => at);
  const isTold = (place: Point): boolean => named.some((at) => distance(at, place) < TOLD);
  return added.lines.flatMap((line) => {
    const places = placesAlong(line);
    const told = isStraight(line) && [places.at(0), places.at(-1)].every((end) => end && isTold(end));
    if (told) return [];
    const row = places.map((place) => placeInRow(place, units)).join('; ');
    const straight = isStraight(line) ? 'straight, ' : '';
    return [unbroken(`On the ${on}, ${line.name}, ${straight}out by down: ${row}.`)];
  });
}

const isStraight = ({ curves }: PlacedLine): boolean => curves.every(({ kind }) => kind === 'line');

/** The places of a line, from one end to the other. */
function placesAlong({ curves }: PlacedLine): readonly Point[] {
  return curves.flatMap((curve, i) => {
    const flat = chordPoints(curve, STRAYS);
    const places = Array.from({ length: flat.length / 2 }, (_, k) =>
      point(flat[2 * k] ?? 0, flat[2 * k + 1] ?? 0),
    );
    return i === 0 ? places : places.slice(1);
  });
}
