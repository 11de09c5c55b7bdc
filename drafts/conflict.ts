import { type Body, type MeasurementName, measurementNames } from '../engine/body/body.ts';
import { withSize } from '../engine/body/with-size.ts';
import { missesAt } from '../engine/constraints/misses-at.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import type { Residual, Solution } from '../engine/constraints/solution.ts';
import { RELATION, RELATION_ANGLE } from '../engine/geometry/tolerance.ts';
import type { Issue } from '../engine/issue.ts';
import { degrees } from '../engine/text/figure.ts';

/** How far a measurement is moved, as a share of itself, to see whether the draft would come nearer: hardly. */
const NUDGE = 1e-4;

/** A measurement may be misread by this share of itself. */
const MISREAD = 0.02;

/**
 * What cannot agree for this body, as a dressmaker can use it: the relation that misses most, in the draft's
 * words and by how much, and the measurements that would help, each with the way it would have to move. These are
 * found by how the misses change, where the draft has come to rest, with each measurement; `sketchFor` plans the draft for
 * another body, and answers nothing where none can be planned. A solution without residuals was asked only whether it can
 * be had, and no reasons are looked for.
 */
export function conflictIssue(
  body: Body,
  solution: Solution,
  sketchFor: (body: Body) => Sketch | undefined,
): Issue {
  const worst = worstResidual(solution);
  const before = totalMiss(solution.residuals);
  const asked = solution.residuals.length > 0 ? measurementNames : [];
  const helpful = asked.flatMap((name) => {
    const sketch = sketchFor(withSize(body, name, body.size[name] * (1 + NUDGE)));
    const slope = sketch ? (totalMiss(missesAt(sketch, solution)) - before) / NUDGE : 0;
    const gain = Math.abs(slope) * MISREAD;
    return gain > 0.04 * before ? [{ name, way: -Math.sign(slope), gain }] : [];
  });
  const advice = helpful
    .toSorted((a, b) => b.gain - a.gain)
    .slice(0, 3)
    .map(({ name, way }) => {
      const estimated = ['measured', 'reconciled'].includes(body.known[name].from)
        ? ''
        : ', so far only estimated';
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

/** The sum of the squares of all misses. */
const totalMiss = (residuals: readonly Residual[]): number =>
  residuals.reduce((sum, residual) => sum + inTolerances(residual) ** 2, 0);

function worstResidual({ residuals }: Solution): Residual {
  const none: Residual = { relation: 'everything agrees', unit: 'mm', error: 0 };
  return residuals.reduce((worst, r) => (inTolerances(r) > inTolerances(worst) ? r : worst), none);
}

function missed({ error, unit }: Residual): string {
  if (unit === 'rad') return degrees(Math.abs(error));
  // As a number, so that a hundred is not written with an exponent.
  const figure = Number(Math.abs(error).toPrecision(2));
  return unit === 'mm' ? `${figure} mm` : `a bend of ${figure} per mm`;
}
