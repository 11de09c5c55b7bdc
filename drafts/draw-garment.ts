import type { Body } from '../engine/body/body.ts';
import { SketchBuilder } from '../engine/constraints/sketch-builder.ts';
import type { Solution } from '../engine/constraints/solution.ts';
import { solve } from '../engine/constraints/solve.ts';
import type { Result } from '../engine/issue.ts';
import { type ConstructionLog, constructionLog } from '../engine/pattern/construction-log.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { conflictIssues } from './conflict.ts';

/** What one part of a garment adds to it. */
export type Parts = Pick<Garment, 'pieces' | 'seams' | 'joins' | 'girths' | 'notions'>;

/**
 * A part of a garment on paper: it has asked the sketch for its lines, and waits to cut its pieces from the
 * solved sketch.
 */
export type Cut = (solution: Solution) => Parts;

/**
 * Draws a garment: plans all its parts in one sketch, solves that as a whole, and cuts the pieces. When no
 * solution holds, answers with the relations that cannot agree for this body.
 */
export function drawGarment(
  name: string,
  body: Body,
  plan: (sketch: SketchBuilder, log: ConstructionLog) => Cut,
): Result<Garment> {
  const log = constructionLog();
  const sketch = new SketchBuilder();
  const cut = plan(sketch, log);
  const solution = solve(sketch.sketch());
  const conflicts = conflictIssues(solution);
  if (conflicts.length > 0) return { ok: false, issues: conflicts };
  const garment = { name, body: body.name, ...cut(solution), steps: log.steps(), issues: [] };
  return { ok: true, value: garment, issues: [] };
}

/** Several parts as one. */
export const together = (...parts: readonly Parts[]): Parts => ({
  pieces: parts.flatMap((part) => part.pieces),
  seams: parts.flatMap((part) => part.seams),
  joins: parts.flatMap((part) => part.joins),
  girths: parts.flatMap((part) => part.girths),
  notions: parts.flatMap((part) => part.notions),
});
