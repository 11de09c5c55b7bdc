import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { type EndMove, withEndsMoved } from '../../../engine/geometry/ends-moved.ts';
import { directionAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import { distance, moved, point, vectorBetween } from '../../../engine/geometry/point.ts';
import { angleOf, scaled, unit, vector as vectorOf } from '../../../engine/geometry/vector.ts';

const cubic: Curve = {
  kind: 'cubic',
  from: point(0, 0),
  handle1: point(10, 60),
  handle2: point(40, 110),
  to: point(130, 120),
};
const mm = fc.double({ min: -5, max: 5, noNaN: true });
const vector = fc.tuple(mm, mm).map(([x, y]) => vectorOf(x, y));
const turn = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const move = fc.tuple(vector, turn).map(([by, turned]): EndMove => ({ by, turned }));

test('a cubic whose ends are moved turns its headings by as much as is asked, and no more', () => {
  fc.assert(
    fc.property(move, move, (start, end) => {
      const changed = withEndsMoved(cubic, start, end);
      expect(distance(changed.from, moved(cubic.from, start.by))).toBeLessThan(1e-12);
      expect(distance(changed.to, moved(cubic.to, end.by))).toBeLessThan(1e-12);
      for (const [which, { turned }] of [
        ['start', start],
        ['end', end],
      ] as const) {
        const heading = angleOf(directionAt(changed, which)) - angleOf(directionAt(cubic, which));
        expect(heading).toBeCloseTo(turned, 9);
      }
    }),
  );
});

test('a cubic moved by one vector keeps its shape', () => {
  fc.assert(
    fc.property(vector, fc.double({ min: 0, max: 1, noNaN: true }), (by, t) => {
      const changed = withEndsMoved(cubic, { by, turned: 0 }, { by, turned: 0 });
      expect(distance(pointAt(changed, t), moved(pointAt(cubic, t), by))).toBeLessThan(1e-9);
    }),
  );
});

test('an arc whose ends move along their radii becomes the arc beside it', () => {
  const centre = point(20, -10);
  const [quarter] = arc(centre, vectorOf(100, 0), Math.PI / 2, 0.1).curves;
  if (!quarter) throw new Error('no arc');
  const out = (at: 'from' | 'to'): EndMove => ({
    by: scaled(unit(vectorBetween(centre, quarter[at])), 30),
    turned: 0,
  });
  const wider = withEndsMoved(quarter, out('from'), out('to'));
  for (const t of [0, 0.2, 0.5, 0.7, 1])
    expect(Math.abs(distance(centre, pointAt(wider, t)) - 130)).toBeLessThan(0.05);
});

test('a line whose ends are moved is the line between its new ends', () => {
  const line: Curve = { kind: 'line', from: point(0, 0), to: point(50, 0) };
  expect(withEndsMoved(line, { by: vectorOf(1, 2), turned: 0.1 }, { by: vectorOf(0, 3), turned: 0 })).toEqual(
    {
      kind: 'line',
      from: point(1, 2),
      to: point(50, 3),
    },
  );
});
