import type { Body } from '../../engine/body/body.ts';
import { changeWords } from '../../engine/body/fitting.ts';
import type { Issue } from '../../engine/issue.ts';

/**
 * Which changes of a fitting stand in the way of a garment that could be drafted without them; nothing where it is
 * the measurements. `draws` says whether it can be drafted for a body.
 */
export function fittingToBlame(body: Body, draws: (body: Body) => boolean): Issue | undefined {
  const { fitting } = body;
  if (fitting.length === 0 || !draws({ ...body, fitting: [] })) return undefined;
  const alone = fitting.filter((change) => draws({ ...body, fitting: fitting.filter((c) => c !== change) }));
  const named = (alone.length > 0 ? alone : fitting).map((change) => `"${changeWords(change)}"`);
  const any = alone.length > 1 ? 'any one of these' : alone.length === 1 ? 'this change' : 'all of these';
  return {
    code: 'fitting-cannot-agree',
    severity: 'error',
    path: 'fitting',
    message: `The measurements can be drafted, but not with the fitting: without ${any} it works: ${named.join(', ')}. Change by less, or measure again and sew another trial bodice.`,
  };
}
