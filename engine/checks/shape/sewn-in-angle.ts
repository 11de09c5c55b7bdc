import { evenPlaces } from '../../geometry/even-places.ts';
import { FLATNESS } from '../../geometry/tolerance.ts';
import type { EdgeChain } from '../../pattern/shape.ts';
import { turnBetween } from '../corner.ts';
import type { Tape } from '../tape.ts';
import { laidOut } from './chain.ts';
import type { Measured, MeasureOf } from './measured.ts';

/** Places looked at along both edges of the seam. */
const PLACES = 81;

/**
 * What a seam takes up over a bulge, degrees: the most that both its edges together turn to the cloth from one place to
 * another. By Gauss and Bonnet that is the curvature that the seam gives the sewn cloth, and in a cone the angle of the
 * dart that it replaces. A place is found to a hundredth of the seam.
 */
export function sewnInAngle({ a, b }: MeasureOf<'sewn-in angle'>, { tape }: Measured): number | undefined {
  const [turnsA, turnsB] = [turned(a, tape), turned(b, tape)];
  if (!turnsA || !turnsB) return undefined;
  let least = Infinity;
  let most = 0;
  for (const [i, turn] of turnsA.entries()) {
    const both = turn + (turnsB[i] ?? 0);
    least = Math.min(least, both);
    most = Math.max(most, both - least);
  }
  return (most * 180) / Math.PI;
}

/** How far a chain has turned to the cloth since its start, place by place, radians. */
function turned(chain: EdgeChain, tape: Tape): readonly number[] | undefined {
  const line = laidOut(chain, tape);
  if (!line) return undefined;
  let sum = 0;
  let before = { x: 1, y: 0 };
  return evenPlaces(line, PLACES, FLATNESS).map(({ direction }) => {
    sum += turnBetween(before, direction);
    before = direction;
    return sum;
  });
}
