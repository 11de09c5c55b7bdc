import type { Body } from '../engine/body/body.ts';
import { cupOf } from '../engine/body/cup.ts';
import { onSide, sideOf } from '../engine/body/fitting.ts';
import { onlyWhether } from '../engine/constraints/only-whether.ts';
import { SketchBuilder } from '../engine/constraints/sketch-builder.ts';
import type { Solution } from '../engine/constraints/solution.ts';
import { type Solver, solve } from '../engine/constraints/solve.ts';
import type { Result } from '../engine/issue.ts';
import { type ConstructionLog, constructionLog } from '../engine/pattern/construction-log.ts';
import type { Garment, Wearer } from '../engine/pattern/garment.ts';
import type { Side } from '../engine/pattern/side.ts';
import { conflictIssue } from './conflict.ts';
import { cuttingSteps } from './cutting-steps.ts';
import { measuredAgain } from './fitting/measured-again.ts';
import { fittingToBlame } from './fitting/to-blame.ts';
import { withoutPlace } from './fitting/without-place.ts';
import { inStages, type StagedSewing, stagesTogether } from './sewing-stages.ts';
import { bothSides } from './sides/both-sides.ts';
import { solversOfSides } from './sides/other-side.ts';
import { issuesOfBoth } from './sides/said-of-both.ts';

/** What one part of a garment adds to it. */
export type Parts = Required<
  Pick<Garment, 'pieces' | 'seams' | 'joins' | 'girths' | 'notions' | 'figures'>
> & {
  readonly sewing?: StagedSewing;
};

/**
 * A part of a garment on paper: it has asked the sketch for its lines, and waits to cut its pieces from the
 * solved sketch.
 */
export type Cut = (solution: Solution) => Parts;

/** The same for a whole garment, of which a part drawn later may still turn out impossible. */
export type CutAll = (solution: Solution) => Result<Parts>;

type Plan = (body: Body, sketch: SketchBuilder, log: ConstructionLog) => CutAll;

/**
 * Draws a garment: measures the body again as the fitting found it, plans all parts in one sketch, solves that as
 * a whole, and cuts the pieces. When no solution holds, answers with what cannot agree for this body, and which
 * measurements, or changes of the fitting, to look at again.
 */
export function drawGarment(name: string, body: Body, plan: Plan, solver: Solver = solve): Result<Garment> {
  const drawn = drawSides(name, body, plan, solver);
  if (drawn.ok) return drawn;
  const blamed = fittingToBlame(body, (other) => drawSides(name, other, plan, onlyWhether).ok);
  return blamed ? { ok: false, issues: [blamed, ...drawn.issues] } : drawn;
}

/**
 * Draws a garment once for both sides, or where the fitting made these differ, once for each: first the side that has
 * no change of its own, so that the other keeps as much of it as can be.
 */
function drawSides(name: string, body: Body, plan: Plan, solver: Solver): Result<Garment> {
  const { fitting } = body;
  if (!fitting.some(sideOf)) return drawOnce(name, body, plan, solver);
  const [one, other] = solversOfSides(solver);
  const draw = (side: Side, solverOf: Solver): Result<Garment> =>
    drawOnce(name, { ...body, fitting: onSide(fitting, side) }, plan, solverOf);
  const leftFirst = !fitting.some((change) => sideOf(change) === 'left');
  const first = draw(leftFirst ? 'left' : 'right', one);
  // A solver that follows an earlier garment would be out of step after a side that could not be drawn.
  const second = draw(leftFirst ? 'right' : 'left', first.ok ? other : solve);
  const [right, left] = leftFirst ? [second, first] : [first, second];
  if (!right.ok || !left.ok) return { ok: false, issues: issuesOfBoth(right.issues, left.issues) };
  const garment = bothSides(right.value, left.value);
  const noPlace = withoutPlace(fitting.filter(sideOf), right.value.pieces);
  return { ok: true, value: { ...garment, issues: [...garment.issues, ...noPlace] }, issues: [] };
}

function drawOnce(name: string, body: Body, plan: Plan, solver: Solver): Result<Garment> {
  const planned = (someBody: Body) => {
    const log = constructionLog();
    const sketch = new SketchBuilder();
    const cut = plan(measuredAgain(someBody, log), sketch, log);
    return { cut, sketch, log };
  };
  const { cut, sketch, log } = planned(body);
  const refusals = log.refusals();
  if (refusals.length > 0) return { ok: false, issues: refusals };
  const solution = solver(sketch.sketch());
  if (solution.status !== 'solved') {
    const again = (other: Body): Solution | undefined => {
      const plannedAgain = planned(other);
      return plannedAgain.log.refusals().length > 0 ? undefined : solve(plannedAgain.sketch.sketch());
    };
    return { ok: false, issues: [conflictIssue(body, solution, again)] };
  }
  const parts = cut(solution);
  if (!parts.ok) return parts;
  const { sewing: staged = {}, ...made } = parts.value;
  const sewing = inStages([cuttingSteps(made.pieces), staged]);
  const issues = [
    ...log.remarks(),
    ...withoutPlace(
      body.fitting.filter((change) => !sideOf(change)),
      made.pieces,
    ),
  ];
  const garment = {
    name,
    body: body.name,
    wearer: wearerOf(body),
    ...made,
    sewing,
    steps: log.steps(),
    issues,
  };
  return { ok: true, value: garment, issues: [] };
}

const wearerOf = (body: Body): Wearer => ({
  cup: cupOf(body).letter,
  bust: body.size.bustGirth,
  underBust: body.size.underBustGirth,
  waist: body.size.waistGirth,
  hip: body.size.hipGirth,
});

/** Several parts as one. */
export const together = (...parts: readonly Parts[]): Parts => ({
  pieces: parts.flatMap((part) => part.pieces),
  seams: parts.flatMap((part) => part.seams),
  joins: parts.flatMap((part) => part.joins),
  girths: parts.flatMap((part) => part.girths),
  notions: parts.flatMap((part) => part.notions),
  figures: parts.flatMap((part) => part.figures),
  sewing: stagesTogether(parts.map((part) => part.sewing ?? {})),
});
