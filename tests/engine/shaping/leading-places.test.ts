import { describe, expect, test } from 'vitest';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { distance, moved, type Point, point } from '../../../engine/geometry/point.ts';
import { heading, scaled } from '../../../engine/geometry/vector.ts';
import { hangTogether, leadingPlaces } from '../../../engine/shaping/leading-places.ts';

/** So many equal chords, each turned by the same angle from the one before, from the origin on. */
function kinkedLine(count: number, length: number, turn: number): readonly Edge[] {
  let from = point(0, 0);
  return Array.from({ length: count }, (_, i): Edge => {
    const to = moved(from, scaled(heading(i * turn), length));
    const chord: Edge = { name: '', curves: [{ kind: 'line', from, to }] };
    from = to;
    return chord;
  });
}

const level = (from: number, to: number, y = 0): Edge => ({
  name: '',
  curves: [{ kind: 'line', from: point(from, y), to: point(to, y) }],
});

const xs = (places: readonly Point[]): readonly number[] => places.map(({ x }) => x);

describe('the places that lead a blend', () => {
  test('lie on the circle as long as a line of equal chords, two on each, but for its ends', () => {
    // Chords of length L that turn by u lie about a circle of radius L / u; its middle stands square to each chord
    // over the chord's middle, L / (2 tan(u / 2)) away.
    const [count, length, turn] = [7, 20, 0.08];
    const places = leadingPlaces(kinkedLine(count, length, turn));
    const centre = point(length / 2, length / (2 * Math.tan(turn / 2)));
    const onCircle = places.slice(1, -1);
    expect(places).toHaveLength(2 * count);
    for (const place of onCircle) expect(distance(place, centre)).toBeCloseTo(length / turn, 3);
    const angles = onCircle.map(({ x, y }) => Math.atan2(x - centre.x, centre.y - y));
    // 0.41 of a chord lies on either side of its middle, and 0.18 between the places on two.
    for (const [i, angle] of angles.entries())
      if (i > 0) expect((angle - (angles[i - 1] ?? 0)) / turn).toBeCloseTo(i % 2 === 0 ? 0.82 : 0.18, 2);
    expect(places[0]).toEqual(point(0, 0));
    expect(places.at(-1)).toEqual(kinkedLine(count, length, turn).at(-1)?.curves[0]?.to);
  });

  test('are the middles of short stretches and of narrow gaps, and the ends of the line', () => {
    expect(xs(leadingPlaces([level(0, 40), level(50, 90), level(100, 140)]))).toEqual([
      0, 20, 45, 70, 95, 120, 140,
    ]);
  });

  test('stand 15 mm apart on a long stretch, 30 mm off a narrow gap', () => {
    expect(xs(leadingPlaces([level(0, 90), level(100, 160)]))).toEqual([
      0, 15, 30, 45, 60, 95, 130, 145, 160,
    ]);
  });

  test('keep farther off a wide gap, half a stretch at most, and cross it in steps', () => {
    // A gap of 120 mm lets go 100 mm of a stretch of 200 mm, and all but the middle of one of 40 mm.
    const places = xs(leadingPlaces([level(0, 200), level(320, 360)]));
    expect(places.filter((x) => x < 200).at(-1)).toBe(100);
    expect(places.filter((x) => x > 200 && x < 320)).toEqual([260]);
    expect(places.filter((x) => x > 320)).toEqual([340, 360]);
  });
});

test('stretches hang together where each begins within rounding of the end of the one before', () => {
  expect(hangTogether([level(0, 10), level(10, 20), level(20 + 1e-7, 30)])).toBe(true);
  expect(hangTogether([level(0, 10), level(10, 20), level(20.1, 30)])).toBe(false);
  expect(hangTogether([level(0, 10), level(10.1, 20)])).toBe(false);
});
