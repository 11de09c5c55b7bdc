import type { Body } from '../engine/body/body.ts';
import { cupOf } from '../engine/body/cup.ts';
import { onSide, sharedBySides, sideOf } from '../engine/body/fitting.ts';
import type { Side } from '../engine/body/side.ts';
import { onlyWhether } from '../engine/constraints/only-whether.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import { SketchBuilder } from '../engine/constraints/sketch-builder.ts';
import type { Solution } from '../engine/constraints/solution.ts';
import { type Solver, solve } from '../engine/constraints/solve.ts';
import { DraftMistake, isDraftMistake } from '../engine/draft-mistake.ts';
import { flatMapped } from '../engine/flat-mapped.ts';
import type { Issue, Result } from '../engine/issue.ts';
import { type DraftingTable, draftingTable } from '../engine/pattern/drafting-table.ts';
import type { Garment, Wearer } from '../engine/pattern/garment.ts';
import type { Piece, PieceEdge } from '../engine/pattern/piece.ts';
import { stepsWhenAsked } from '../engine/pattern/steps-when-asked.ts';
import type { Choice, StylingOf } from '../engine/pattern/styling.ts';
import { pieceWrittenOut, seamWrittenOut } from '../engine/pattern/written-out.ts';
import { checkParts } from './check-parts.ts';
import { conflictIssue } from './conflict.ts';
import { cuttingSteps } from './cutting-steps.ts';
import { measuredAgain } from './fitting/measured-again.ts';
import { fittingToBlame } from './fitting/to-blame.ts';
import { withoutPlace } from './fitting/without-place.ts';
import { notchShapes } from './notch-shapes.ts';
import type { CutAll, Parts } from './parts.ts';
import { inStages } from './sewing-stages.ts';
import { bothSides } from './sides/both-sides.ts';
import { solversOfSides } from './sides/other-side.ts';
import { issuesOfBoth } from './sides/said-of-both.ts';
import { usually } from './usual.ts';

/** What is asked for: the garment by name, its choices and how they were made, and the body it is for. */
export interface GarmentOrder<Choices extends readonly Choice[]> {
  readonly name: string;
  readonly choices: Choices;
  readonly styling: StylingOf<Choices>;
  readonly body: Body;
  readonly solver?: Solver | undefined;
  /** Edges, by name, that nothing in this garment is sewn to: they wait for what is made apart. */
  readonly open?: readonly string[];
}

/** Draws on the table what a garment asks of the sketch, and hands back how its pieces are cut from the solution. */
type Plan<Choices extends readonly Choice[]> = (table: DraftingTable<Choices>) => CutAll;

/** A plan for one garment, ready for any body. */
type Draw = (body: Body, solver: Solver) => Result<Garment>;

/**
 * Draws a garment: measures the body again as the fitting found it, plans all parts in one sketch, solves that as
 * a whole, and cuts the pieces. When no solution holds, answers with what cannot agree for this body, and which
 * measurements, or changes of the fitting, to look at again.
 */
export function drawGarment<Choices extends readonly Choice[]>(
  order: GarmentOrder<Choices>,
  plan: Plan<Choices>,
): Result<Garment> {
  const { body, solver = solve } = order;
  const draw: Draw = (other, solverOf) => drawOnce({ ...order, body: other }, plan, solverOf);
  const drawn = drawSides(body, draw, solver);
  if (drawn.ok) return drawn;
  const blamed = fittingToBlame(body, (other) => drawSides(other, draw, onlyWhether).ok);
  return blamed ? { ok: false, issues: [blamed, ...drawn.issues] } : drawn;
}

/**
 * Draws a garment once for both sides, or where the fitting made these differ, once for each: first the side that has
 * no change of its own, so that the other keeps as much of it as can be.
 */
function drawSides(body: Body, drawFor: Draw, solver: Solver): Result<Garment> {
  const fitting = sharedBySides(body.fitting);
  if (!fitting.some(sideOf)) return drawFor({ ...body, fitting }, solver);
  const [one, other] = solversOfSides(solver);
  const draw = (side: Side, solverOf: Solver): Result<Garment> =>
    drawFor({ ...body, fitting: onSide(fitting, side) }, solverOf);
  const leftFirst = !fitting.some((change) => sideOf(change) === 'left');
  const first = draw(leftFirst ? 'left' : 'right', one);
  // A solver that follows an earlier garment would be out of step after a side that could not be drawn.
  const second = draw(leftFirst ? 'right' : 'left', first.ok ? other : solve);
  const [right, left] = leftFirst ? [second, first] : [first, second];
  if (!right.ok || !left.ok) return { ok: false, issues: issuesOfBoth(right.issues, left.issues) };
  const unlike = sewnUnlike(right.value, left.value);
  if (unlike) return { ok: false, issues: [unlike] };
  const garment = bothSides(right.value, left.value);
  const noPlace = withoutPlace(fitting.filter(sideOf), right.value.pieces);
  return { ok: true, value: { ...garment, issues: [...garment.issues, ...noPlace] }, issues: [] };
}

/** Tells where one side would have a seam that the other has not: a notch of the armhole may part an edge on one side alone. */
function sewnUnlike(right: Garment, left: Garment): Issue | undefined {
  const [ofRight, ofLeft] = [right, left].map(({ seams }) => new Set(seams.map(({ name }) => name)));
  const alone = [...right.seams, ...left.seams].find(({ name }) => !ofRight?.has(name) || !ofLeft?.has(name));
  return (
    alone && {
      code: 'fitting-not-one-sided',
      severity: 'error',
      path: 'fitting',
      message: `Right and left could not be sewn alike: one side alone would have the seam “${alone.name}”. Change less on one side, or both sides.`,
    }
  );
}

function drawOnce<Choices extends readonly Choice[]>(
  { name, body, choices, styling, open = [] }: GarmentOrder<Choices>,
  plan: Plan<Choices>,
  solver: Solver,
): Result<Garment> {
  const planned = (onto: DraftingTable<Choices>) => {
    const table = measuredAgain(onto);
    const cut: unknown = plan(table);
    if (typeof cut === 'function') return { table, cut: cut as CutAll };
    throw new DraftMistake(`The plan of “${name}” should return a function that cuts its pieces.`, []);
  };
  const empty = draftingTable(body, choices, styling);
  const { cut, table } = planned(empty);
  const refusals = table.refusals();
  if (refusals.length > 0) return { ok: false, issues: refusals };
  const sketch = usually(table.sketch.sketch(), styling);
  const solution = solvedOr(
    () => solver(sketch),
    (mistake) => planned(empty.afresh({ sketch: new SketchBuilder(mistake) })),
  );
  if (solution.status !== 'solved') {
    const sketchOf = (other: DraftingTable<Choices>): Sketch | undefined => {
      const again = planned(other).table;
      return again.refusals().length > 0 ? undefined : again.sketch.sketch();
    };
    return { ok: false, issues: [conflictIssue(empty, { sketch, solution }, sketchOf)] };
  }
  table.solved(solution);
  const parts = cut(solution);
  checkParts(name, parts);
  if (!parts.ok) return parts;
  const { sewing: staged = {}, ...made } = parts.value;
  const sewing = inStages([cuttingSteps(made.pieces), staged]);
  const issues = [
    ...table.remarks(),
    ...withoutPlace(
      body.fitting.filter((change) => !sideOf(change)),
      made.pieces,
    ),
  ];
  const shapes = [...made.shapes, ...notchShapes];
  const drawn = {
    name,
    body: body.name,
    wearer: wearerOf(body),
    ...made,
    pieces: leftOpen(made, open).map(pieceWrittenOut),
    seams: made.seams.map(seamWrittenOut),
    shapes,
    sewing,
    issues,
  };
  return { ok: true, value: stepsWhenAsked(drawn, table.steps), issues: [] };
}

/** Solves; a mistake in the sketch is thrown where it was written, found by planning once more. */
function solvedOr(solved: () => Solution, planAgain: (mistake: DraftMistake) => void): Solution {
  try {
    return solved();
  } catch (error) {
    if (isDraftMistake(error)) planAgain(error);
    throw error;
  }
}

/** The pieces with the edges of these names left open where no seam sews them. */
function leftOpen({ pieces, seams }: Parts, names: readonly string[]): readonly Piece[] {
  if (names.length === 0) return pieces;
  const sewn = flatMapped(seams, ({ a, b }) => [...a, ...b]);
  const isSewn = (piece: Piece, edge: PieceEdge): boolean =>
    sewn.some((ref) => ref.piece === piece.name && ref.edge === edge.name);
  return pieces.map((piece) => ({
    ...piece,
    edges: piece.edges.map(
      (edge): PieceEdge =>
        edge.turn === 'seam' && names.includes(edge.name) && !isSewn(piece, edge)
          ? { ...edge, open: true }
          : edge,
    ),
  }));
}

const wearerOf = (body: Body): Wearer => ({
  cup: cupOf(body).letter,
  bust: body.size.bustGirth,
  underBust: body.size.underBustGirth,
  waist: body.size.waistGirth,
  hip: body.size.hipGirth,
});
