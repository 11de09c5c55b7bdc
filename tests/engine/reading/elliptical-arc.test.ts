import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { ellipticalArc } from '../../../engine/reading/elliptical-arc.ts';
import { uniform } from '../../uniform.ts';

describe('an arc of an ellipse', () => {
  test('from one place of it to another is the ellipse between them, the way and as far as the flags say', () => {
    fc.assert(
      fc.property(
        fc.record({
          x: uniform(-200, 200),
          y: uniform(-200, 200),
          rx: uniform(1, 300),
          ry: uniform(1, 300),
          tilt: uniform(-4, 4),
          start: uniform(-4, 4),
          turn: uniform(-6.2, 6.2),
        }),
        ({ x, y, rx, ry, tilt, start, turn }) => {
          // Where a half turn is nearly reached, rounding decides which side the centre lies on.
          fc.pre(Math.abs(turn) > 0.05 && Math.abs(Math.abs(turn) - Math.PI) > 0.05);
          const at = (angle: number) => {
            const [u, v] = [rx * Math.cos(angle), ry * Math.sin(angle)];
            return point(
              x + Math.cos(tilt) * u - Math.sin(tilt) * v,
              y + Math.sin(tilt) * u + Math.cos(tilt) * v,
            );
          };
          const flags = { large: Math.abs(turn) > Math.PI, clockwise: turn > 0 };
          const curves = ellipticalArc(at(start), at(start + turn), { rx, ry, tilt, ...flags });
          expect(curves[0]?.from).toEqual(at(start));
          expect(curves.at(-1)?.to).toEqual(at(start + turn));
          for (const [i, curve] of curves.entries())
            for (const t of [0, 0.5, 1]) {
              const share = (i + t) / curves.length;
              expect(distance(pointAt(curve, t), at(start + share * turn))).toBeLessThan(1e-3);
            }
        },
      ),
    );
  });

  test('whose radii do not reach is half of the smallest ellipse of their shape that does', () => {
    const curves = ellipticalArc(point(0, 0), point(40, 0), {
      rx: 1,
      ry: 2,
      tilt: 0,
      large: false,
      clockwise: true,
    });
    const lowest = Math.min(...curves.flatMap((curve) => [0, 0.5, 1].map((t) => pointAt(curve, t).y)));
    expect(lowest).toBeCloseTo(-40, 3);
  });

  test('that leads nowhere draws nothing, and one without a radius is a line', () => {
    const shape = { rx: 5, ry: 5, tilt: 0, large: true, clockwise: true };
    expect(ellipticalArc(point(3, 4), point(3, 4), shape)).toEqual([]);
    expect(ellipticalArc(point(3, 4), point(3, 5), shape)).not.toEqual([]);
    expect(ellipticalArc(point(3, 4), point(2, 4), shape)).not.toEqual([]);
    for (const flat of [{ rx: 0 }, { ry: 0 }])
      expect(ellipticalArc(point(3, 4), point(9, 9), { ...shape, ...flat })).toEqual([
        { kind: 'line', from: point(3, 4), to: point(9, 9) },
      ]);
  });
});
