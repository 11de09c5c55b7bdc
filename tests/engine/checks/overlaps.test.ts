import { describe, expect, it } from 'vitest';
import { overlapFaults } from '../../../engine/checks/overlaps.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';

const square = (left: number): Edge => {
  const corners = [point(left, 0), point(left + 100, 0), point(left + 100, 100), point(left, 100)];
  return {
    name: 'cutting line',
    curves: corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4] ?? from })),
  };
};

describe('pieces on one paper', () => {
  it('may lie side by side', () => {
    expect(
      overlapFaults(
        new Map([
          ['front', square(0)],
          ['back', square(101)],
        ]),
      ),
    ).toEqual([]);
  });

  it('must not lie on each other, and the fault says over how much', () => {
    const [fault] = overlapFaults(
      new Map([
        ['front', square(0)],
        ['back', square(80)],
      ]),
    );
    expect(fault).toMatchObject({ code: 'pieces-overlap', path: 'front' });
    expect(fault?.value).toBeCloseTo(2000, 6);
  });
});
