import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import {
  lockstitchThread,
  overedgeThread,
  runningThread,
  threadFactors,
  threadLost,
  threadNeeds,
  zigzagThread,
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

  /** The length of a line through places in space. */
  const path = (places: readonly (readonly [number, number, number])[]): number =>
    places.slice(1).reduce((sum, [x, y, z], i) => {
      const [a = 0, b = 0, c = 0] = places[i] ?? [];
      return sum + Math.hypot(x - a, y - b, z - c);
    }, 0);

  test('of a zigzag and of an overedge is the length of the way that their threads take', () => {
    const [s, w, t] = [2, 5, 0.6];
    const needle = path([
      [0, 0, 0],
      [s, w, 0],
      [s, w, t / 2],
      [s, w, 0],
    ]);
    expect(zigzagThread(s, w, t)).toBeCloseTo((2 * needle) / s, 12);
    const through = path([
      [0, 0, 0],
      [s, 0, 0],
      [s, 0, t],
      [s, 0, 0],
    ]);
    // Each looper: from the needle's line to the edge and back to the line a stitch on; one of them round the edge and back.
    const looper = path([
      [0, 0, 0],
      [s / 2, w, 0],
      [s, 0, 0],
    ]);
    expect(overedgeThread(s, w, t)).toBeCloseTo((through + 2 * looper + 2 * t) / s, 12);
    expect(runningThread(s, t)).toBeCloseTo(
      path([
        [0, 0, 0],
        [s, 0, 0],
        [s, 0, t],
      ]) / s,
      12,
    );
  });

  test('of an overedge and a zigzag, drawn tight, is less than tables of the trade give for soft ones (14 and 7; from memory)', () => {
    for (const [stitch, soft] of [
      ['504', 14],
      ['304', 7],
    ] as const) {
      expect(threadFactors[stitch]).toBeLessThan(soft);
      expect(threadFactors[stitch]).toBeGreaterThan(0.7 * soft);
    }
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
