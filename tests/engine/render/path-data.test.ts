import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { distance, type Point, point } from '../../../engine/geometry/point.ts';
import { readPath } from '../../../engine/reading/read-path.ts';
import { numeral, pathData } from '../../../engine/render/path-data.ts';
import { uniform } from '../../uniform.ts';

const coordinate = uniform(-2000, 2000);
const place = fc.record({ x: coordinate, y: coordinate });

/** A chain of lines and cubics through random places. */
const chain = fc
  .tuple(place, fc.array(fc.tuple(place, place, place, fc.boolean()), { minLength: 1, maxLength: 6 }))
  .map(([start, steps]) => {
    let from: Point = start;
    return steps.map(([handle1, handle2, to, straight]): Curve => {
      const curve: Curve = straight
        ? { kind: 'line', from, to }
        : { kind: 'cubic', from, handle1, handle2, to };
      from = to;
      return curve;
    });
  });

const pointsOf = (curves: readonly Curve[]): readonly Point[] =>
  curves.flatMap((c) => (c.kind === 'line' ? [c.from, c.to] : [c.from, c.handle1, c.handle2, c.to]));

describe('numerals', () => {
  test.each([
    [0, '0'],
    [-0, '0'],
    [-0.0000001, '0'],
    [12.7, '12.7'],
    [100, '100'],
    [1e-7, '0'],
    [123456.78900051, '123456.789001'],
  ])('%d is written %s', (value, text) => {
    expect(numeral(value)).toBe(text);
  });
});

describe('path data', () => {
  test('comes back as it was drawn, each coordinate within 0.00005 mm', () => {
    fc.assert(
      fc.property(chain, (curves) => {
        fc.pre(curves.every((curve) => distance(curve.from, curve.to) > 0.001));
        const read = readPath(pathData(curves));
        if (!read.ok) throw new Error(read.reason);
        expect(read.curves.map((c) => c.kind)).toEqual(curves.map((c) => c.kind));
        const before = pointsOf(curves);
        for (const [i, p] of pointsOf(read.curves).entries()) {
          expect(Math.abs(p.x - (before[i]?.x ?? Number.NaN))).toBeLessThan(0.000051);
          expect(Math.abs(p.y - (before[i]?.y ?? Number.NaN))).toBeLessThan(0.000051);
        }
      }),
    );
  });

  test('leaves out a line too short for its digits', () => {
    const [a, b, c] = [point(1, 1), point(1.0000001, 1.0000001), point(5, 5)];
    const curves: Curve[] = [
      { kind: 'line', from: a, to: b },
      { kind: 'line', from: b, to: c },
    ];
    expect(pathData(curves)).toBe('M1 1L5 5');
  });

  test('closes a chain that should be closed', () => {
    const read = readPath(pathData([{ kind: 'line', from: point(0, 0), to: point(10, 0) }], true));
    expect(read).toMatchObject({ ok: true, closed: true });
    expect(read.ok && read.curves).toHaveLength(2);
  });
});

describe('reading a path', () => {
  test('draws the same lines from absolute, relative and smooth commands as svg-path-properties does', () => {
    for (const d of [
      'M10 10L40 10H60V30h-10v5l-5 5',
      'm10,10 20,0 0,20',
      'M0 0C10 0 20 10 20 20S30 40 40 40',
      'M0 0c10 0 20 10 20 20s10 20 20 20',
      'M0 0Q10 20 30 0T60 0t20 10',
      'M0 0q10 20 30 0l5 5z',
      'M1e1 1.5e1L.5.5-3-4',
    ]) {
      const read = readPath(d);
      if (!read.ok) throw new Error(`${d}: ${read.reason}`);
      const length = edgeLength({ name: d, curves: read.curves });
      expect(length, d).toBeCloseTo(new svgPathProperties(d).getTotalLength(), 2);
    }
  });

  test('takes the drawing’s scale', () => {
    const read = readPath('m1 1l3 4', 25.4);
    expect(read.ok && read.curves[0]).toEqual({
      kind: 'line',
      from: point(25.4, 25.4),
      to: { x: 25.4 * 4, y: 25.4 * 5 },
    });
  });

  test.each([
    ['', 'does not start'],
    ['L1 1', 'should start with'],
    ['M0 0', 'draws nothing'],
    ['M0 0A5 5 0 0 1 10 0', 'command “A”'],
    ['M0 0L1', 'missed param'],
    ['M0 0L1 1M2 2L3 3', 'several lines'],
    ['M0 0L1 1ZL2 2', 'after it was closed'],
    ['M0 0L1 1; drop', 'bad command ;'],
    ['M0 0R1 1 2 2', 'command “R”'],
    ['M0 0L1 1Z5', 'bad command 5'],
    ['M0 0LNaN 1', 'param should start'],
    ['M0 0L1e99 1', 'too large'],
  ])('refuses “%s” with a reason', (d, reason) => {
    const read = readPath(d);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.reason).toContain(reason);
  });

  test('never throws, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'MLHVCSQTZAmlz0123456789.-+eE, ;') }), (d) => {
        readPath(d);
      }),
    );
  });
});
