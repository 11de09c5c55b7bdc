import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { polygonOf, sharedArea } from '../../../engine/geometry/polygon.ts';
import { crossesItself, faultsOf, overlap } from '../../../engine/lay/proof.ts';
import { rectangle, upright } from './shapes.ts';

const at = (corners: readonly number[], dx = 0, dy = 0): Point[] =>
  Array.from({ length: corners.length / 2 }, (_, i) =>
    point((corners[2 * i] ?? 0) + dx, (corners[2 * i + 1] ?? 0) + dy),
  );

const square = [0, 0, 1, 0, 1, 1, 0, 1];
/** A square with a square notch in its upper side, and what just fills the notch. */
const notched = [0, 0, 1, 0, 1, 1, 2, 1, 2, 0, 3, 0, 3, 2, 0, 2];

describe('two polygons', () => {
  test.each<[string, Point[], Point[], boolean]>([
    ['apart', at(square), at(square, 3), false],
    ['that share an edge touch only', at(square), at(square, 1), false],
    ['that share half an edge touch only', at(square), at(square, 1, 0.5), false],
    ['that share a corner touch only', at(square), at(square, 1, 1), false],
    ['that overlap by a millionth overlap', at(square), at(square, 1 - 1e-6), true],
    ['that overlap by the last digit overlap', at(square), at(square, 1 - 2 ** -53), true],
    ['that are the same overlap', at(square), at(square), true],
    ['one inside the other overlap', at(square), at([0.2, 0.2, 0.4, 0.2, 0.3, 0.4]), true],
    ['one inscribed in the other overlap', at(square), at([0.5, 0, 1, 0.5, 0.5, 1, 0, 0.5]), true],
    ['of which one just fills a notch touch only', at(notched), at(square, 1), false],
    [
      'of which one is too broad for the notch overlap',
      at(notched),
      at([0.999999, 0, 2, 0, 2, 1, 1, 1]),
      true,
    ],
    ['of which one is too deep for the notch overlap', at(notched), at(square, 1, 1e-6), true],
    ['that cross overlap', at([0, 0, 3, 0, 3, 1, 0, 1]), at([1, -1, 2, -1, 2, 2, 1, 2]), true],
    ['a tip on the middle of an edge touches only', at(square), at([0.5, 1, 0.6, 2, 0.4, 2]), false],
    ['a tip through an edge overlaps', at(square), at([0.5, 1 - 1e-6, 0.6, 2, 0.4, 2]), true],
  ])('%s', (_, a, b, expected) => {
    for (const [p, q] of [
      [a, b],
      [b, a],
      [a.toReversed(), b],
      [a, b.toReversed()],
    ] as const)
      expect(overlap(p, q)).toBe(expected);
  });

  test('overlap where the area they share is more than nothing (flatten-js), for polygons of chance', () => {
    const star = fc
      .array(fc.double({ min: 0.2, max: 1, noNaN: true }), { minLength: 3, maxLength: 9 })
      .map((radii) =>
        radii.map((r, i) =>
          point(
            r * Math.cos((2 * Math.PI * i) / radii.length),
            r * Math.sin((2 * Math.PI * i) / radii.length),
          ),
        ),
      );
    const move = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(star, star, move, move, (a, b, dx, dy) => {
        const moved = b.map(({ x, y }) => point(x + dx, y + dy));
        const outline = (corners: readonly Point[]) => [
          {
            name: '',
            curves: corners.map((from, i) => ({
              kind: 'line' as const,
              from,
              to: corners[(i + 1) % corners.length] ?? from,
            })),
          },
        ];
        expect(polygonOf(outline(a), 1)).toHaveLength(a.length);
        const area = sharedArea(outline(a), outline(moved), 1);
        // The library is no exact judge of slivers.
        if (area > 1e-6 || area === 0) expect(overlap(a, moved)).toBe(area > 0);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a lay', () => {
  const problem = { width: 2, shapes: [rectangle('square', 2, 1, 1)] };
  const place = (copy: number, x: number, y: number) => ({
    shape: 0,
    copy,
    way: upright[0] ?? { turn: 0, mirrored: false },
    x,
    y,
  });

  test('that is whole, inside and free of overlaps has no faults', () => {
    expect(faultsOf(problem, { length: 1, placements: [place(0, 0, 0), place(1, 0, 1)] })).toEqual([]);
  });

  test.each([
    ['overlaps by a millionth', 1.1, [place(0, 0, 0), place(1, 0, 1 - 1e-6)], 'overlap'],
    ['leaves the strip at its side', 1, [place(0, 0, 0), place(1, 0, 1 + 1e-12)], 'outside'],
    ['leaves the strip at its end', 1, [place(0, 0, 0), place(1, 1e-12, 1)], 'outside'],
    ['lacks a copy', 1, [place(0, 0, 0)], 'count'],
    ['has one copy twice', 3, [place(0, 0, 0), place(0, 1, 0)], 'count'],
  ] as const)('that %s is refused', (_, length, placements, kind) => {
    expect(faultsOf(problem, { length, placements }).map((fault) => fault.kind)).toEqual([kind]);
  });
});

test('an outline that crosses itself, or runs back over itself, is found', () => {
  expect(crossesItself(at(notched))).toBe(false);
  expect(crossesItself(at([0, 0, 1, 1, 1, 0, 0, 1]))).toBe(true);
  expect(crossesItself(at([0, 0, 2, 0, 1, 0, 1, 1]))).toBe(true);
});
