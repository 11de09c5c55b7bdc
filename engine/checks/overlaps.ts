import type { Edge } from '../geometry/curve.ts';
import { sharedArea } from '../geometry/polygon.ts';
import { FLATNESS } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';

/** Two cutting lines may share this much before cloth would be cut twice, mm^2: less than a pin's head. */
const LEAST_OVERLAP = 1;

/** Pieces that lie on each other on one paper: cloth cannot be cut twice. */
export function overlapFaults(cutLines: ReadonlyMap<string, Edge>): Issue[] {
  const lines = [...cutLines];
  return lines.flatMap(([name, line], i) =>
    lines.slice(i + 1).flatMap(([other, otherLine]): Issue[] => {
      const shared = sharedArea([line], [otherLine], FLATNESS);
      if (shared <= LEAST_OVERLAP) return [];
      return [
        {
          code: 'pieces-overlap',
          severity: 'error',
          path: name,
          message: `${name} and ${other} lie on each other on the paper, over ${Math.round(shared)} square mm.`,
          value: shared,
          limits: { max: LEAST_OVERLAP, unit: 'mm²' },
        },
      ];
    }),
  );
}
