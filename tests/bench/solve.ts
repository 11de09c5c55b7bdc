import { compiled } from '../../engine/constraints/compile/program.ts';
import { solve } from '../../engine/constraints/solve.ts';
import { garmentSketch } from './garment-sketch.ts';
import { figures, table, timed } from './timing.ts';

/** Sizes by which the sketch is grown, so that no two solves in turn are the same. */
const SIZES = [-0.08, -0.05, -0.02, 0, 0.01, 0.04, 0.07, 0.1];

/** Times the constraint engine on a garment-sized sketch, from first guesses that are good and that are not. */
export function benchSolve(): string {
  const { parts } = compiled(garmentSketch());
  const sizes = parts.map(
    ({ slots, relations, wishes }) => `${slots.length}/${relations.length}/${wishes.length}`,
  );
  const rows = [0, 0.05, 0.1, 0.2].map((off) => {
    const sketches = SIZES.map((grow) => garmentSketch(off, grow));
    const answers = sketches.map(solve);
    const steps = answers.reduce((sum, { iterations }) => sum + iterations, 0) / answers.length;
    let turn = 0;
    const { median, p99 } = timed(() => solve(sketches[turn++ % sketches.length] ?? garmentSketch()));
    const held = answers.filter(({ status }) => status === 'solved').length;
    return [
      `guesses ${figures(60 * off)} mm, ${figures(off)} rad off`,
      figures(median / 1000),
      figures(p99 / 1000),
      figures(steps),
      `${held} of ${answers.length}`,
    ];
  });
  const title = `Solving a garment's sketch (unknowns/relations/wishes by part: ${sizes.join(', ')})`;
  return `${title}\n${table([['', 'median ms', 'p99 ms', 'steps', 'solved'], ...rows])}`;
}
