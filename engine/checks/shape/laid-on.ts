import { evenPlaces } from '../../geometry/even-places.ts';
import { distance } from '../../geometry/point.ts';
import { FLATNESS } from '../../geometry/tolerance.ts';
import { laidOut } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Places compared along both lines, their ends among them. */
const PLACES = 41;

/**
 * How far two lines part, mm, laid on each other by start and heading, cloth on the same side: the greatest distance
 * between places at the same share of either's length, which is where a seam sews them together. To 0.02 mm at each of
 * the places compared.
 */
export const partedMost = ({ a, b }: MeasureOf<'laid on'>, { tape }: Measured): number | undefined => {
  const [lineA, lineB] = [laidOut(a, tape), laidOut(b, tape)];
  if (!lineA || !lineB) return undefined;
  const others = evenPlaces(lineB, PLACES, FLATNESS);
  return Math.max(
    ...evenPlaces(lineA, PLACES, FLATNESS).map(({ point: p }, i) => distance(p, others[i]?.point ?? p)),
  );
};
