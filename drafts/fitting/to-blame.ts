import type { Body } from '../../engine/body/body.ts';
import { changeWords, type FittingChange } from '../../engine/body/fitting.ts';
import type { Issue } from '../../engine/issue.ts';
import { smallestThatHelps } from '../../engine/smallest-that-helps.ts';

/** Drafts that may be tried in the search for the changes to blame, once it is known that they are. */
const ATTEMPTS = 3;

/**
 * Which changes of a fitting stand in the way of a garment that could be drafted without them; nothing where it is
 * the measurements. `draws` says whether it can be drafted for a body.
 */
export function fittingToBlame(body: Body, draws: (body: Body) => boolean): Issue | undefined {
  const { fitting } = body;
  if (fitting.length === 0 || !draws({ ...body, fitting: [] })) return undefined;
  const without = (changes: readonly FittingChange[]): boolean =>
    draws({ ...body, fitting: fitting.filter((change) => !changes.includes(change)) });
  const blamed = smallestThatHelps(fitting, without, ATTEMPTS);
  const named = blamed.map((change) => `"${changeWords(change)}"`);
  const any = blamed.length === 1 ? 'this change' : 'these';
  return {
    code: 'fitting-cannot-agree',
    severity: 'error',
    path: 'fitting',
    message: `The measurements can be drafted, but not with the fitting: without ${any} it works: ${named.join(', ')}. Change by less, or measure again and sew another trial bodice.`,
  };
}
