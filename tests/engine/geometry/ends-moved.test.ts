import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { type EndMove, withEndsMoved } from '../../../engine/geometry/ends-moved.ts';
import { directionAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import { distance, moved, point } from '../../../engine/geometry/point.ts';
import { angleOf, heading, scaled, vector } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';

const cubic: Curve = {
  kind: 'cubic',
  from: point(0, 0),
  handle1: point(10, 60),
  handle2: point(40, 110),
  to: point(130, 120),
};

const mm = uniform(-5, 5);
const share = uniform(0, 1);
const endMove: fc.Arbitrary<EndMove> = fc.record({
  by: fc.tuple(mm, mm).map(([x, y]) => vector(x, y)),
  turned: uniform(-0.5, 0.5),
});

/** From one angle (radians) to another, in (-pi, pi]. */
const turn = (from: number, to: number): number => angleOf(heading(to - from));

test('a cubic whose ends are moved ends there, and turns its headings by as much as is asked', () => {
  fc.assert(
    fc.property(endMove, endMove, (start, end) => {
      const changed = withEndsMoved(cubic, start, end);
      expect(distance(changed.from, moved(cubic.from, start.by))).toBeLessThan(1e-12);
      expect(distance(changed.to, moved(cubic.to, end.by))).toBeLessThan(1e-12);
      for (const [which, { turned }] of [
        ['start', start],
        ['end', end],
      ] as const) {
        const [before, after] = [cubic, changed].map((curve) => angleOf(directionAt(curve, which)));
        expect(turn(before ?? 0, after ?? 0)).toBeCloseTo(turned, 12);
      }
    }),
  );
});

test('a cubic moved all over by one vector keeps its shape', () => {
  fc.assert(
    fc.property(endMove, share, ({ by }, t) => {
      const changed = withEndsMoved(cubic, { by, turned: 0 }, { by, turned: 0 });
      expect(distance(pointAt(changed, t), moved(pointAt(cubic, t), by))).toBeLessThan(1e-12);
    }),
  );
});

// The cubic that stands for a quarter circle grows with its radius: k = 0.5522847498 of it to each handle.
test('a quarter circle whose ends move along their radii is the quarter circle beside it (closed form)', () => {
  const arc = (radius: number): Curve => ({
    kind: 'cubic',
    from: point(radius, 0),
    handle1: point(radius, 0.5522847498 * radius),
    handle2: point(0.5522847498 * radius, radius),
    to: point(0, radius),
  });
  fc.assert(
    fc.property(mm, share, (by, t) => {
      const beside = withEndsMoved(
        arc(80),
        { by: scaled(heading(0), by), turned: 0 },
        { by: scaled(heading(Math.PI / 2), by), turned: 0 },
      );
      expect(distance(pointAt(beside, t), pointAt(arc(80 + by), t))).toBeLessThan(1e-12);
    }),
  );
});

test('a line moved by one vector stays a line', () => {
  const line = { kind: 'line', from: point(0, 0), to: point(50, 0) } as const;
  const by = { by: vector(1, 2), turned: 0 };
  expect(withEndsMoved(line, by, by)).toEqual({ kind: 'line', from: point(1, 2), to: point(51, 2) });
});

test('a line whose ends are moved so that it would lie aslant bends, and keeps its headings as they are turned', () => {
  const line = { kind: 'line', from: point(0, 0), to: point(50, 0) } as const;
  const bent = withEndsMoved(line, { by: vector(0, 2), turned: 0 }, { by: vector(0, 3), turned: 0.1 });
  expect(bent.kind).toBe('cubic');
  expect(directionAt(bent, 'start').y).toBeCloseTo(0, 9);
  expect(Math.atan2(directionAt(bent, 'end').y, directionAt(bent, 'end').x)).toBeCloseTo(0.1, 9);
});
