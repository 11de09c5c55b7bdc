import type { Sketch, SketchScalar } from '../../engine/constraints/sketch.ts';
import type { Solution } from '../../engine/constraints/solution.ts';
import type { Solver } from '../../engine/constraints/solve.ts';

/** A sketch of one side of a body, and its solution. */
interface Solved {
  readonly sketch: Sketch;
  readonly solution: Solution;
}

/**
 * The solvers of one side of a garment and of the other, drawn after it with as many sketches. The other side keeps
 * what it can of the first: a sketch that asks for the same is not solved again, and a curve whose ends and directions
 * are given as on the first side is drawn as there. Without that a sleeve that differs would bend the armholes of both
 * sides apart by a tenth of a millimetre, and nobody could cut their panels as a pair.
 */
export function solversOfSides(solver: Solver): readonly [one: Solver, other: Solver] {
  const solved: Solved[] = [];
  const one: Solver = (sketch) => {
    const solution = solver(sketch);
    solved.push({ sketch, solution });
    return solution;
  };
  const other: Solver = (sketch) => {
    const before = solved.shift();
    if (!before) return solver(sketch);
    return isSame(sketch, before.sketch) ? before.solution : solver(held(sketch, before));
  };
  return [one, other];
}

/** A sketch with the curves held that are given as in another: all that was left open of them are their handles. */
function held(sketch: Sketch, { sketch: first, solution }: Solved): Sketch {
  const isGiven = (name: string): boolean => {
    const point = sketch.points.get(name);
    const scalar = sketch.scalars.get(name);
    return (
      (point?.free === 'none' && same(point, first.points.get(name))) ||
      (scalar?.free === false && same(scalar, first.scalars.get(name)))
    );
  };
  const handles = [...sketch.curves].flatMap(([name, curve]) => {
    if (curve.kind !== 'cubic' || !same(curve, first.curves.get(name))) return [];
    const { from, to, startAngle, endAngle, startLength, endLength } = curve;
    return [from, to, startAngle, endAngle].every(isGiven) ? [startLength, endLength] : [];
  });
  const fixed = handles.flatMap((name): [string, SketchScalar][] => {
    const [scalar, at] = [sketch.scalars.get(name), solution.scalars[name]];
    return scalar && at !== undefined ? [[name, { ...scalar, at, free: false }]] : [];
  });
  return { ...sketch, scalars: new Map([...sketch.scalars, ...fixed]) };
}

const isSame = (one: Sketch, other: Sketch): boolean => same(written(one), written(other));

const written = ({ points, scalars, curves, relations, wishes }: Sketch): unknown => [
  [...points],
  [...scalars],
  [...curves],
  relations,
  wishes,
];

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
