import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import {
  lockstitchThread,
  threadFactors,
  threadLost,
  threadNeeds,
} from '../../../engine/materials/thread.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment } = drafted('skirt', shippedBody('leading-lady'));

describe('thread', () => {
  test('of a lockstitch is the length of its path: along, down to the middle of the cloth, and up again', () => {
    // Geometry: each of two threads, stitch for stitch, as straight strokes.
    for (const [stitch, thick] of [
      [2.5, 0.6],
      [4, 1],
      [1.5, 2],
    ] as const)
      expect(lockstitchThread(stitch, thick)).toBeCloseTo(
        (2 * (stitch + thick / 2 + thick / 2)) / stitch,
        12,
      );
  });

  test('of a usual lockstitch is what tables of the trade give (2.5; from memory, common practice, no source)', () => {
    expect(threadFactors['301']).toBeCloseTo(2.5, 1);
  });

  test('of a skirt is that of its seams on all gores, overcast on both edges', () => {
    const length = (piece: string, edge: string): number => {
      const found = garment.pieces
        .find(({ name }) => name === piece)
        ?.edges.find(({ name }) => name === edge);
      return found ? edgeLength(found) : 0;
    };
    // Three seams between gores, each on the right and on the left: all but the centre back.
    const gores = garment.seams
      .filter(({ name }) => name.startsWith('skirt, '))
      .map(({ b }) => b.reduce((sum, { piece, edge }) => sum + length(piece, edge), 0));
    const seams = 2 * gores.reduce((a, b) => a + b, 0);
    const lockstitch = threadNeeds(garment).find(({ stitch }) => stitch === '301');
    expect(lockstitch?.stitched).toBeCloseTo(seams, 6);
    expect(lockstitch?.thread).toBeCloseTo(seams * threadFactors['301'] * (1 + threadLost), 6);
    const hem = threadNeeds(garment).find(({ stitch }) => stitch === '200')?.stitched ?? 0;
    const overcast = threadNeeds(garment).find(({ stitch }) => stitch === '304')?.stitched ?? 0;
    expect(overcast).toBeCloseTo(2 * seams + hem, 6);
  });

  test('by hand of a hem is as long as the hem is round, whole gores and halves', () => {
    const hem = threadNeeds(garment).find(({ stitch }) => stitch === '200')?.stitched ?? 0;
    const sweep = garment.pieces.reduce((sum, { edges }) => {
      const own = edges.filter(({ turn }) => turn === 'hem').reduce((all, edge) => all + edgeLength(edge), 0);
      return sum + 2 * own;
    }, 0);
    expect(hem).toBeCloseTo(sweep, 6);
  });

  test('is not known of a garment without a sewing order', () => {
    const { sewing: _, ...unsewn } = garment;
    expect(threadNeeds(unsewn)).toEqual([]);
  });
});
