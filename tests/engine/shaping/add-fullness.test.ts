import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { addFullness, type Fullness } from '../../../engine/shaping/add-fullness.ts';
import { anyPanel, codesOf, edgeNamed, made, rectangle } from './pieces.ts';

const asked: Fullness = { from: 'hem', to: 'top', lines: 5, edge: 'hem', length: 500 };

describe('adding gathering fullness', () => {
  // Flat = finished x ratio: gathered 2.5 to 1, 20 in of seam take 50 in (workroom arithmetic).
  test('20 in of seam at 2.5 to 1 take 50 in', () => {
    const full = made(addFullness(rectangle(508, 300), { ...asked, length: 2.5 * 508 }));
    expect(edgeLength(edgeNamed(full.piece, 'hem'))).toBeCloseTo(1270, 2);
    expect(full.amount).toBeCloseTo(762, 6);
  });

  test.each([undefined, 'top'])('any hem comes out at the length asked for, hinge %s', (hinge) => {
    fc.assert(
      fc.property(anyPanel, fc.double({ min: 1.1, max: 1.8, noNaN: true }), (piece, ratio) => {
        const length = ratio * edgeLength(edgeNamed(piece, 'hem'));
        const full = made(addFullness(piece, { ...asked, length, ...(hinge ? { hinge } : {}) }));
        expect(Math.abs(edgeLength(edgeNamed(full.piece, 'hem')) - length)).toBeLessThan(0.05);
      }),
      { numRuns: 15, endOnFailure: true },
    );
  });

  test.each<[string, Partial<Fullness>]>([
    ['edge-not-slashed', { edge: 'side' }],
    ['edge-not-slashed', { hinge: 'hem' }],
    ['no-fullness', { length: 200 }],
    ['no-such-edge', { to: 'cuff' }],
  ])('is refused: %s', (code, how) => {
    expect(codesOf(addFullness(rectangle(300, 300), { ...asked, ...how }))).toEqual([code]);
  });
});
