import { describe, expect, it } from 'vitest';
import { cutAsMade } from '../../../engine/checks/cut-as-made.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { movedBy, transformedEdge } from '../../../engine/geometry/transform.ts';
import { garment, line, polygon } from '../garments.ts';

const square = polygon(
  'pocket',
  [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ],
  ['top', 'right', 'bottom', 'left'].map((name) => [name, {}]),
);
const made = garment([square]);
const cut = cuttingLines(made, PARALLEL).get('pocket') ?? { name: '', curves: [] };
const faults = (drawn: Edge) => cutAsMade(made, new Map([['pocket', drawn]]));

describe('a cutting line beside the one that its stitching line makes', () => {
  it('may stray from it by three times what each may stray from the true parallel', () => {
    expect(faults(cut)).toEqual([]);
    expect(faults(transformedEdge(cut, movedBy({ x: 2.9 * PARALLEL, y: 0 })))).toEqual([]);
    expect(faults(transformedEdge(cut, movedBy({ x: 3.1 * PARALLEL, y: 0 })))).toHaveLength(1);
  });

  it('is told by how far it strays at its worst place', () => {
    const [fault, ...rest] = faults(transformedEdge(cut, movedBy({ x: 0, y: 2 })));
    expect(rest).toEqual([]);
    expect(fault).toMatchObject({
      code: 'cutting-line-moved',
      path: 'pocket',
      limits: { min: 0, max: 3 * PARALLEL },
    });
    expect(fault?.value).toBeCloseTo(2, 6);
  });

  it('is told where it goes beyond the other, and where the other goes beyond it', () => {
    const spike = [line(point(-10, -10), point(-10, -17)), line(point(-10, -17), point(-10, -10))];
    expect(faults({ ...cut, curves: [...spike, ...cut.curves] })[0]?.value).toBeCloseTo(7, 6);
    // Without its right side, the middle of that is as far from the rest as half of it is long.
    const open = cut.curves.filter(({ from, to }) => from.x < 100 || to.x < 100);
    expect(open).toHaveLength(cut.curves.length - 1);
    expect(faults({ ...cut, curves: open })[0]?.value).toBeCloseTo(60, 0);
  });

  it('is left to others where it is missing', () => {
    expect(cutAsMade(made, new Map())).toEqual([]);
    expect(faults({ ...cut, curves: [] })).toEqual([]);
  });
});
