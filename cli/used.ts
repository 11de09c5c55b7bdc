import type { Result } from '../engine/issue.ts';
import { Unusable } from './unusable.ts';

/** The value of a result, or the end of the command. */
export function used<T>(result: Result<T>): T {
  if (!result.ok) throw new Unusable(result.issues);
  return result.value;
}
