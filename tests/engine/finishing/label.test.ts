import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideStrokes, labelPlace, strokes } from '../../../engine/finishing/label.ts';
import { distanceToStroke, leastDistanceToStroke } from '../../../engine/finishing/rectangle.ts';
import { contains } from '../../../engine/geometry/inside.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { uniform } from '../../uniform.ts';
import { cubic, edge, line, piece, polygon } from '../garments.ts';

const box = (width: number, height: number, rest: Partial<Piece> = {}): Piece => ({
  ...polygon(
    'front',
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    [
      ['top', {}],
      ['right', {}],
      ['bottom', {}],
      ['left', {}],
    ],
  ),
  grain: { from: point(4, height / 2 - 1), to: point(4, height / 2 + 1) },
  ...rest,
});

describe('the distance from a rectangle to a stroke', () => {
  const unit = { middle: point(10, 10), width: 4, height: 2 };
  const from = (x1: number, y1: number, x2: number, y2: number) =>
    distanceToStroke(unit, { from: point(x1, y1), to: point(x2, y2) });

  it('is measured square to a side, to a corner, or to the end of the stroke', () => {
    expect(from(0, 14, 30, 14)).toBe(3);
    expect(from(15, 0, 15, 30)).toBe(3);
    expect(from(15, 15, 30, 30)).toBeCloseTo(5, 12);
    expect(from(14, 11, 12, 13)).toBeCloseTo(Math.SQRT2, 12);
  });

  it('is nothing where the stroke passes through, lies inside or touches', () => {
    expect(from(0, 10, 30, 10)).toBe(0);
    expect(from(9.5, 10, 10.5, 10)).toBe(0);
    expect(from(12, 11, 20, 20)).toBe(0);
    expect(from(10, 10, 10, 10)).toBe(0);
  });

  it('is that of the nearest of many places of the stroke, however the two lie', () => {
    const [place, side] = [uniform(-30, 30), uniform(0.1, 40)];
    fc.assert(
      fc.property(
        place,
        place,
        side,
        side,
        fc.tuple(place, place, place, place),
        (x, y, width, height, ends) => {
          const [x1, y1, x2, y2] = ends;
          const away = (share: number): number =>
            Math.hypot(
              Math.max(0, Math.abs(x1 + share * (x2 - x1) - x) - width / 2),
              Math.max(0, Math.abs(y1 + share * (y2 - y1) - y) - height / 2),
            );
          const least = Math.min(...Array.from({ length: 1001 }, (_, i) => away(i / 1000)));
          const found = distanceToStroke(
            { middle: point(x, y), width, height },
            { from: point(x1, y1), to: point(x2, y2) },
          );
          expect(found).toBeLessThanOrEqual(least + 1e-9);
          expect(found).toBeGreaterThanOrEqual(least - Math.hypot(x2 - x1, y2 - y1) / 1000);
        },
      ),
    );
  });
});

describe('the distance that a rectangle and a stroke are apart at least', () => {
  const unit = { middle: point(10, 10), width: 4, height: 2 };
  const from = (x1: number, y1: number, x2: number, y2: number) =>
    leastDistanceToStroke(unit, { from: point(x1, y1), to: point(x2, y2) });

  it('is that along one axis: of two gaps the wider, and nothing where there is none', () => {
    expect([from(5, 0, 3, 30), from(17, 30, 15, 0)]).toEqual([3, 3]);
    expect([from(0, 4, 30, 2), from(30, 20, 0, 16)]).toEqual([5, 5]);
    expect([from(15, 18, 30, 30), from(20, 13, 30, 30)]).toEqual([7, 8]);
    expect(from(9, 9, 11, 11)).toBe(0);
  });

  it('is never more than the distance', () => {
    const place = uniform(-30, 30);
    const side = fc.double({ min: 0.1, max: 40, noNaN: true });
    fc.assert(
      fc.property(
        place,
        place,
        side,
        side,
        fc.tuple(place, place, place, place),
        (x, y, width, height, ends) => {
          const rectangle = { middle: point(x, y), width, height };
          const stroke = { from: point(ends[0], ends[1]), to: point(ends[2], ends[3]) };
          expect(leastDistanceToStroke(rectangle, stroke)).toBeLessThanOrEqual(
            distanceToStroke(rectangle, stroke) + 1e-9,
          );
        },
      ),
    );
  });
});

describe('what is drawn inside a piece', () => {
  it('is its grainline, and of every mark as long a line as it says about its place, of a cross two', () => {
    const at = point(50, 40);
    const marked = box(100, 100, {
      marks: [
        { name: 'buttonhole', kind: 'buttonhole', at, angle: 0, length: 20 },
        { name: 'drill', kind: 'cross', at, angle: 0, length: 6 },
      ],
    });
    expect(insideStrokes(marked)).toEqual([
      marked.grain,
      { from: point(40, 40), to: point(60, 40) },
      { from: point(47, 40), to: point(53, 40) },
      { from: point(50, expect.closeTo(43, 12)), to: point(50, expect.closeTo(37, 12)) },
    ]);
  });
});

describe('finding a place for a label', () => {
  it('takes the middle of an empty piece, upright', () => {
    const place = labelPlace(
      box(200, 100, { grain: { from: point(1, 1), to: point(1, 2) } }),
      { width: 60, height: 30 },
      3,
    );
    expect(place).toMatchObject({ rotation: 0, width: 60, height: 30 });
    expect(place?.middle.y).toBeCloseTo(50, 0);
  });

  it('betters it by halved steps, to a hundredth of the block where the middle lies on no grid', () => {
    const empty = box(97, 97, { grain: { from: point(1, 1), to: point(1, 2) } });
    const place = labelPlace(empty, { width: 20, height: 20 }, 3);
    expect(place?.middle.x).toBeCloseTo(48.5, 1);
    expect(place?.middle.y).toBeCloseTo(48.5, 1);
  });

  it('turns the block where the piece is too narrow for it upright', () => {
    expect(labelPlace(box(40, 200), { width: 60, height: 20 }, 3)).toMatchObject({
      rotation: 90,
      width: 20,
      height: 60,
    });
  });

  it('gives none where the block has no room either way', () => {
    expect(labelPlace(box(40, 40), { width: 60, height: 20 }, 3)).toBeUndefined();
    expect(labelPlace(box(61, 200), { width: 60, height: 59 }, 3)).toBeUndefined();
  });

  it('keeps clear of inside lines, marks and grainline, on the larger side of them', () => {
    const crowded = box(200, 100, {
      lines: [{ name: 'casing', kind: 'casing', curves: [line(point(0, 40), point(200, 40))] }],
      marks: [{ name: 'buttonhole', kind: 'buttonhole', at: point(100, 70), angle: Math.PI / 2, length: 60 }],
      grain: { from: point(150, 50), to: point(150, 90) },
    });
    const place = labelPlace(crowded, { width: 60, height: 30 }, 3);
    expect(place?.middle.x).toBeLessThan(70);
    expect(place?.middle.y).toBeGreaterThan(55);
  });

  it('keeps the clearance from everything in any piece, and always finds the same place', () => {
    const x = uniform(-40, 40);
    fc.assert(
      fc.property(
        fc.tuple(x, x, x, x),
        fc.double({ min: 20, max: 80, noNaN: true }),
        ([a, b, c, d], width) => {
          const curved = piece(
            'front',
            [
              edge('top', [cubic(point(0, 0), point(60, a), point(120, b), point(180, 0))]),
              edge('side', [cubic(point(180, 0), point(180 + c, 100), point(180 + d, 200), point(180, 300))]),
              edge('bottom', [line(point(180, 300), point(0, 300))]),
              edge('centre', [line(point(0, 300), point(0, 0))]),
            ],
            { grain: { from: point(90, 100), to: point(90, 200) } },
          );
          const place = labelPlace(curved, { width, height: 30 }, 3);
          expect(place).toEqual(labelPlace(curved, { width, height: 30 }, 3));
          if (!place) throw new Error('there is room for this');
          const outline = curved.edges.flatMap((e) => e.curves.flatMap(strokes));
          expect(contains(curved.edges, place.middle)).toBe(true);
          for (const stroke of [...outline, ...insideStrokes(curved)]) {
            expect(distanceToStroke(place, stroke)).toBeGreaterThanOrEqual(3);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
