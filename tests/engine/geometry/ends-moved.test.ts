import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { withEndsMoved } from '../../../engine/geometry/ends-moved.ts';
import { directionAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import { distance, moved, point } from '../../../engine/geometry/point.ts';
import { magnitude, minus, plus, scaled, vector as vectorOf } from '../../../engine/geometry/vector.ts';

const cubic: Curve = {
  kind: 'cubic',
  from: point(0, 0),
  handle1: point(10, 60),
  handle2: point(40, 110),
  to: point(130, 120),
};
const mm = fc.double({ min: -5, max: 5, noNaN: true });
const vector = fc.tuple(mm, mm).map(([x, y]) => vectorOf(x, y));

test('a cubic whose ends are moved keeps its headings, and is moved by the stated mean in between', () => {
  fc.assert(
    fc.property(vector, vector, fc.double({ min: 0, max: 1, noNaN: true }), (start, end, t) => {
      const changed = withEndsMoved(cubic, start, end);
      for (const which of ['start', 'end'] as const)
        expect(magnitude(minus(directionAt(changed, which), directionAt(cubic, which)))).toBeLessThan(1e-12);
      const w = 3 * t ** 2 - 2 * t ** 3;
      const by = plus(scaled(start, 1 - w), scaled(end, w));
      expect(distance(pointAt(changed, t), moved(pointAt(cubic, t), by))).toBeLessThan(1e-9);
    }),
  );
});

test('a line whose ends are moved is the line between its new ends', () => {
  const line: Curve = { kind: 'line', from: point(0, 0), to: point(50, 0) };
  expect(withEndsMoved(line, vectorOf(1, 2), vectorOf(0, 3))).toEqual({
    kind: 'line',
    from: point(1, 2),
    to: point(50, 3),
  });
});
