import { RowBasis } from '../numeric/row-basis.ts';
import type { SketchPart } from './compile/parts.ts';
import { compiled, settledRelations } from './compile/program.ts';
import { holds } from './compile/residuals.ts';
import { valuesOf } from './compile/values.ts';
import { smallestConflict } from './conflict.ts';
import { Model } from './method/model.ts';
import type { Sketch } from './sketch.ts';
import type { Diagnosis, Solution } from './solution.ts';

/**
 * What a relation must add, and an unknown keep, as a share, to count. Larger: relations at a sharp angle to each
 * other would count as the same. Smaller: what a solution misses by would count as a difference.
 */
const COUNTS = 1e-6;

/**
 * Says what the relations of a sketch fix at a solution and what they leave open, by rank: an orthonormal basis of
 * the rows of their Jacobian, built relation by relation in the sketch's order, shows which add nothing to those
 * before them, and what of each unknown lies outside it. Unknowns are measured at arm's length.
 *
 * - `degreesOfFreedom`: unknowns less rank. Inequalities and bounds fix nothing.
 * - `redundant`: relations that hold and add nothing to the ones before them.
 * - `conflicting`: for a solution whose relations do not all hold, a smallest set that cannot hold together: without
 *   any one of them the others can. Bounds appear as `bounds of <scalar>`.
 * - `free`: points and scalars that can still move.
 * - `adrift`: those that can move without any wish being fulfilled worse, as far as slopes tell.
 *
 * Throws as `solve` does. At a place where relations only touch, such as a triangle as flat as its sides allow, rank
 * is that of the place and not of places nearby.
 */
export function diagnose(sketch: Sketch, solution: Solution): Diagnosis {
  const ready = compiled(sketch);
  const x = valuesOf(ready.slots, solution);
  const held = new Set(solution.residuals.filter(holds).map(({ relation }) => relation));
  const redundant = settledRelations(ready).map(({ name }) => name);
  const free = new Set<number>();
  const adrift = new Set<number>();
  let degreesOfFreedom = 0;
  for (const part of ready.parts) {
    const model = new Model(part, ready.slots.guess);
    model.evaluate(x);
    const { n, equal } = model;
    const rows = equal.rows.map((slope, i) => slope / (part.arms[i % n] as number));
    const basis = new RowBasis(n, COUNTS);
    let row = 0;
    for (const { equations } of model.zero) {
      const before = basis.count;
      for (let r = 0; r < equations.rows; r++, row++) basis.add(rows, row * n);
      if (basis.count === before) redundant.push(equations.name);
    }
    degreesOfFreedom += n - basis.count;
    for (const column of movable(basis)) free.add(part.slots[column] as number);
    for (const row of wishRows(part, x)) basis.add(row);
    for (const column of movable(basis)) adrift.add(part.slots[column] as number);
  }
  const named = (slots: ReadonlySet<number>): readonly string[] =>
    [
      ...[...ready.slots.points].filter(([, slot]) => slots.has(slot) || slots.has(slot + 1)),
      ...[...ready.slots.scalars].filter(([, slot]) => slots.has(slot)),
    ].map(([name]) => name);
  return {
    degreesOfFreedom,
    redundant: redundant.filter((name) => held.has(name)),
    conflicting: solution.status === 'solved' ? [] : smallestConflict(sketch, solution),
    free: named(free),
    adrift: named(adrift),
  };
}

/** The derivatives of what a part's wishes miss by, at arm's length, a row for each residual. */
function wishRows({ slots, arms, wishes }: SketchPart, x: Float64Array): readonly Float64Array[] {
  return wishes.flatMap(({ equations, elements }) => {
    const rows = Array.from({ length: equations.rows }, () => new Float64Array(slots.length));
    for (const { element, columns } of elements) {
      const jacobian = new Float64Array(equations.rows * columns.length);
      element.evaluate(x, new Float64Array(equations.rows), jacobian);
      for (const [r, row] of rows.entries())
        for (const [k, column] of columns.entries())
          if (column >= 0)
            row[column] =
              (row[column] as number) +
              (jacobian[r * columns.length + k] as number) / (arms[column] as number);
    }
    return rows;
  });
}

/** The columns that can move while every row of a basis stays at zero. */
function movable(basis: RowBasis): readonly number[] {
  const unit = new Float64Array(basis.n);
  return Array.from(unit, (_, column) => column).filter((column) => {
    unit.fill(0);
    unit[column] = 1;
    return basis.project(unit) > 0;
  });
}
