import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import { completeness } from './sewing/complete.ts';
import { crossingFaults } from './sewing/crossings.ts';
import { unknownNames } from './sewing/names.ts';
import { scheduleOf } from './sewing/schedule.ts';
import { seamFaults } from './sewing/seam-order.ts';
import { stateFaults } from './sewing/states.ts';
import type { Tape } from './tape.ts';

/**
 * Proves the sewing order of a garment: nothing in it that the garment has not, nothing left out or done twice,
 * nothing sewn before its parts are ready, and no step that closes off a later one. A garment without a sewing
 * order, such as one read from a file, has nothing to prove.
 */
export function sewingFaults(garment: Garment, tape: Tape): Issue[] {
  if (!garment.sewing) return [];
  const schedule = scheduleOf(garment.sewing);
  return [
    ...unknownNames(garment, garment.sewing, tape),
    ...completeness(garment, schedule),
    ...stateFaults(schedule),
    ...seamFaults(garment, schedule),
    ...crossingFaults(garment, schedule),
  ];
}
