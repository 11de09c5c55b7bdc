import { describe, expect, it } from 'vitest';
import { beyondFoldFaults } from '../../../engine/checks/beyond-fold.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { edgeEnd } from '../../../engine/geometry/edge.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { movedBy, transformedEdge } from '../../../engine/geometry/transform.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { polygon } from '../garments.ts';

/** Half a V: a neckline that rises from the fold at so many degrees. */
const halfV = (degrees: number) => {
  const up = 200 * Math.tan((degrees * Math.PI) / 180);
  return polygon(
    'half',
    [
      [0, 0],
      [200, -up],
      [200, 300],
      [0, 300],
    ],
    [
      ['neckline', { allowance: 6.4 }],
      ['side', {}],
      ['waist', {}],
      ['fold', { turn: 'fold', allowance: 0, rank: 9 }],
    ],
  );
};

describe('a cutting line at a fold', () => {
  it.each([0, 30, 60, 67, 75, 85])('ends on it where a neckline rises from it by %i degrees', (degrees) => {
    const made = halfV(degrees);
    expect(beyondFoldFaults(made, cuttingLine(made, PARALLEL), 0.01)).toEqual([]);
    // Prolonged on the fold by w / cos(slope), as two parallels cut off at a straight line do.
    const top = Math.min(
      ...cuttingLine(made, PARALLEL)
        .curves.map((curve) => edgeEnd({ name: '', curves: [curve] }))
        .filter(({ x }) => Math.abs(x) < 1e-6)
        .map(({ y }) => y),
    );
    expect(top).toBeCloseTo(-6.4 / Math.cos((degrees * Math.PI) / 180), 6);
  });

  it('is told where it goes on beyond it', () => {
    const made = halfV(30);
    const shifted = transformedEdge(cuttingLine(made, PARALLEL), movedBy({ x: -2, y: 0 }));
    expect(beyondFoldFaults(made, shifted, 0.05)).toMatchObject([
      { code: 'cut-beyond-fold', path: 'half/fold', value: expect.closeTo(2, 9) },
    ]);
  });

  it.each(['scene-painter', 'stage-manager', 'wardrobe-mistress'])(
    'ends on it under the steep point of a neckline for the %s',
    (name) => {
      const styling = { shoulder: 'whole', front: 'plain', neckline: 'pointed' };
      expect(drafted('bodice', shippedBody(name), styling).report.ok).toBe(true);
    },
  );
});
