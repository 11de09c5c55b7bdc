import { type Body, type MeasurementName, measurementNames } from '../engine/body/body.ts';
import { withSize } from '../engine/body/with-size.ts';
import type { Residual, Solution } from '../engine/constraints/solution.ts';
import { RELATION, RELATION_ANGLE } from '../engine/geometry/tolerance.ts';
import type { Issue } from '../engine/issue.ts';
import { degrees } from '../engine/pattern/written.ts';

/** How far a measurement is moved, as a share of itself, to see whether the draft would come nearer. */
const NUDGE = 0.02;

/**
 * What cannot agree for this body, as a dressmaker can use it: the relation that misses most, in the draft's
 * words and by how much, and the measurements that would help, each with the way it would have to move. These are
 * found by moving each measurement a little and solving again; `solveFor` answers nothing where no sketch can be
 * drawn at all. A solution without residuals was asked only whether it can be had, and no reasons are looked for.
 */
export function conflictIssue(
  body: Body,
  solution: Solution,
  solveFor: (body: Body) => Solution | undefined,
): Issue {
  const worst = worstResidual(solution);
  const before = totalMiss(solution);
  const asked = solution.residuals.length > 0 ? measurementNames : [];
  const helpful = asked.flatMap((name) => {
    const gains = ([1, -1] as const).map((way) => {
      const tried = solveFor(withSize(body, name, body.size[name] * (1 + way * NUDGE)));
      return { name, way, gain: tried ? before - totalMiss(tried) : 0 };
    });
    const [more, less] = gains;
    const best = more && less && less.gain > more.gain ? less : more;
    return best && best.gain > 0.02 * before ? [best] : [];
  });
  const advice = helpful
    .toSorted((a, b) => b.gain - a.gain)
    .slice(0, 3)
    .map(({ name, way }) => {
      const estimated = body.known[name].from === 'measured' ? '' : ', so far only estimated';
      return `${inWords(name)} (${way > 0 ? 'larger' : 'smaller'} would help${estimated})`;
    });
  const lookAgain =
    advice.length > 0
      ? ` Measure again: ${advice.join(', ')}.`
      : ' No single measurement explains it; look at the styling too.';
  return {
    code: 'cannot-agree',
    severity: 'error',
    path: worst.relation,
    message: `These measurements cannot be drafted together. Asked that ${worst.relation}, the draft misses by ${missed(worst)}.${lookAgain}`,
    value: worst.error,
  };
}

const inWords = (name: MeasurementName): string => name.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`);

const inTolerances = ({ error, unit }: Residual): number =>
  Math.abs(error) / (unit === 'rad' ? RELATION_ANGLE : RELATION);

const totalMiss = (solution: Solution): number =>
  solution.residuals.reduce((sum, residual) => sum + inTolerances(residual), 0);

function worstResidual({ residuals }: Solution): Residual {
  const none: Residual = { relation: 'everything agrees', unit: 'mm', error: 0 };
  return residuals.reduce((worst, r) => (inTolerances(r) > inTolerances(worst) ? r : worst), none);
}

function missed({ error, unit }: Residual): string {
  if (unit === 'rad') return degrees(Math.abs(error));
  return unit === 'mm'
    ? `${Math.abs(error).toPrecision(2)} mm`
    : `a bend of ${Math.abs(error).toPrecision(2)} per mm`;
}
