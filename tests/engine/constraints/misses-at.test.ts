import { describe, expect, it } from 'vitest';
import { missesAt } from '../../../engine/constraints/misses-at.ts';
import { SketchBuilder } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { point } from '../../../engine/geometry/point.ts';

/** A line from a fixed end, as long as is said and upright; another length that is at most 10. */
function sketch(length: number, fixedAt = 0) {
  const s = new SketchBuilder();
  s.fixed('top', point(fixedAt, 0));
  s.point('foot', point(0, 30));
  s.line('side', 'top', 'foot');
  s.length('slack', 4, { max: 10 });
  s.relation(
    { kind: 'length', name: 'as long', terms: [{ curves: ['side'], times: 1 }], mm: length },
    { kind: 'sum', name: 'upright', terms: [{ point: 'foot', axis: 'x', times: 1 }], value: 0 },
    { kind: 'sum', name: 'slack', terms: [{ scalar: 'slack', times: 1 }], value: length / 10 },
  );
  return s.sketch();
}

const misses = (...given: Parameters<typeof missesAt>) =>
  Object.fromEntries(missesAt(...given).map(({ relation, error }) => [relation, error]));

describe('what a sketch misses where the solution of another lies', () => {
  const solution = solve(sketch(40));

  it('is nothing where the sketch is the same', () => {
    for (const error of Object.values(misses(sketch(40), solution))) expect(error).toBeCloseTo(0, 6);
  });

  it('is by how much it asks for more or less', () => {
    const found = misses(sketch(47), solution);
    expect(found['as long']).toBeCloseTo(-7, 6);
    expect(found.slack).toBeCloseTo(-0.7, 6);
    expect(found.upright).toBeCloseTo(0, 6);
  });

  it('takes what is fixed from the sketch, all else from the solution, and bounds into account', () => {
    expect(misses(sketch(40, 30), solution)['as long']).toBeCloseTo(50 - 40, 6);
    const wide = { ...solution, scalars: { ...solution.scalars, slack: 12.5 } };
    expect(misses(sketch(40), wide)['bounds of slack']).toBeCloseTo(2.5, 9);
  });
});
