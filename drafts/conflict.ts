import type { Residual, Solution } from '../engine/constraints/solution.ts';
import { RELATION, RELATION_ANGLE } from '../engine/geometry/tolerance.ts';
import type { Issue } from '../engine/issue.ts';
import { degrees, figure } from '../engine/pattern/construction-log.ts';

/** The relations that a solution leaves unfulfilled, in the draft's own words; none when it is solved. */
export function conflictIssues(solution: Solution): readonly Issue[] {
  if (solution.status === 'solved') return [];
  const broken = solution.residuals.filter(({ error, unit }) => Math.abs(error) > tolerance(unit));
  return broken.map((residual) => ({
    code: 'cannot-agree',
    severity: 'error',
    path: residual.relation,
    message: `For this body the draft cannot make it so that ${residual.relation}: it misses by ${missed(residual)}.`,
    value: residual.error,
  }));
}

const tolerance = (unit: Residual['unit']): number => (unit === 'rad' ? RELATION_ANGLE : RELATION);

function missed({ error, unit }: Residual): string {
  if (unit === 'rad') return degrees(Math.abs(error));
  return unit === 'mm' ? `${figure(Math.abs(error))} mm` : `a bend of ${Math.abs(error).toPrecision(2)} per mm`;
}
