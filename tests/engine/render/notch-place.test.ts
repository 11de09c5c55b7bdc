import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../engine/geometry/point.ts';
import { amidStrokes } from '../../../engine/render/notch-place.ts';
import { edge, line } from '../garments.ts';

const LENGTH = 120;
const straight = edge('armhole', [line(point(0, 0), point(LENGTH, 0))]);

/** Where the strokes of a double notch are drawn: 6 mm apart about its place, moved inward from the ends of the edge. */
const drawnFor = (at: number): readonly number[] => {
  const first = Math.max(0, Math.min(at - 3, LENGTH - 6));
  return [first, first + 6];
};

describe('a double notch read back', () => {
  it('stands in the middle of its strokes', () => {
    fc.assert(
      fc.property(fc.double({ min: 3.1, max: LENGTH - 3.1, noNaN: true }), (at) => {
        expect(amidStrokes(straight, drawnFor(at), 'double')).toBeCloseTo(at, 9);
      }),
    );
  });

  it.each([0, LENGTH])('stands at the end of its edge where it was moved inward from there: %i', (at) => {
    expect(amidStrokes(straight, drawnFor(at), 'double')).toBe(at);
    const rounded = drawnFor(at).map((place) => Math.min(LENGTH, place + 0.0001));
    expect(amidStrokes(straight, rounded, 'double')).toBe(at);
  });

  it('is found where it is from edge to edge, as near as its strokes can tell', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: LENGTH, noNaN: true }), (at) => {
        expect(Math.abs(amidStrokes(straight, drawnFor(at), 'double') - at)).toBeLessThanOrEqual(3 + 1e-9);
      }),
    );
  });
});

describe('any other notch read back', () => {
  it('stands where its stroke does, at an end too', () => {
    for (const at of [0, 0.5, 60, LENGTH]) expect(amidStrokes(straight, [at], 'single')).toBe(at);
    expect(amidStrokes(straight, [2, 4], 'level')).toBe(3);
  });
});
