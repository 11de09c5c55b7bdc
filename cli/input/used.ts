import type { Result } from '../../engine/issue.ts';
import type { Unit } from '../../engine/text/units.ts';
import { Unusable } from './unusable.ts';

/** The value of a result, or the end of the command, whose reader has lengths in `units`. */
export function used<T>(result: Result<T>, units?: Unit): T {
  if (!result.ok) throw new Unusable(result.issues, units);
  return result.value;
}
