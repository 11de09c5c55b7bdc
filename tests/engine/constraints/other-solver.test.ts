import { createRequire } from 'node:module';
import { GcsWrapper, init_planegcs_module, type SketchPrimitive, SolveStatus } from '@salusoft89/planegcs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Relation } from '../../../engine/constraints/relations.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { distance, type Point } from '../../../engine/geometry/point.ts';
import { placed } from './answers.ts';
import { knownSketch } from './random-sketch.ts';

const wasm = createRequire(import.meta.url).resolve('@salusoft89/planegcs/dist/planegcs_dist/planegcs.wasm');

/** The same small sketches in another solver, one that knows nothing of garments. */
describe('next to a general geometric solver', () => {
  let other: Awaited<ReturnType<typeof init_planegcs_module>>;
  beforeAll(async () => {
    other = await init_planegcs_module({ locateFile: () => wasm });
  });

  it('places every point where the other solver does, to 1e-6 mm', () => {
    fc.assert(
      fc.property(knownSketch(0.02, false), ({ sketch }) => {
        const answer = solve(sketch);
        const theirs = solvedByOther(other, sketch);
        for (const [name, at] of theirs) expect(distance(placed(answer, name), at)).toBeLessThan(1e-6);
      }),
      { numRuns: 100 },
    );
  });
});

function solvedByOther(
  module: Awaited<ReturnType<typeof init_planegcs_module>>,
  sketch: Sketch,
): ReadonlyMap<string, Point> {
  const solver = new GcsWrapper(new module.GcsSystem());
  solver.push_primitives_and_params([
    ...[...sketch.points].map(
      ([id, { at, free }]): SketchPrimitive => ({
        id,
        type: 'point',
        x: at.x,
        y: at.y,
        fixed: free === 'none',
      }),
    ),
    ...sketch.relations.map(inTheirWords),
  ]);
  solver.set_convergence_threshold(1e-20);
  const status = solver.solve();
  expect([SolveStatus.Success, SolveStatus.Converged]).toContain(status);
  solver.apply_solution();
  const places = [...sketch.points.keys()].map((id) => {
    const { x, y } = solver.sketch_index.get_sketch_point(id);
    return [id, { x, y }] as const;
  });
  solver.destroy_gcs_module();
  return new Map(places);
}

function inTheirWords(relation: Relation): SketchPrimitive {
  const id = relation.name;
  switch (relation.kind) {
    case 'distance':
      return { id, type: 'p2p_distance', p1_id: relation.a, p2_id: relation.b, distance: relation.mm };
    case 'heading':
      return { id, type: 'p2p_angle', p1_id: relation.a, p2_id: relation.b, angle: relation.angle };
    case 'on line':
      return {
        id,
        type: 'point_on_line_ppp',
        p_id: relation.point,
        lp1_id: relation.through[0],
        lp2_id: relation.through[1],
      };
    default:
      throw new Error(`The other solver is not asked about "${relation.kind}".`);
  }
}
