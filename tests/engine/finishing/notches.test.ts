import { describe, expect, it } from 'vitest';
import { notchStrokes } from '../../../engine/finishing/notches.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import type { Notch, Piece } from '../../../engine/pattern/piece.ts';
import { withDartsMarked } from '../../../engine/shaping/mark-darts.ts';
import { cubic, edge, line, notch, piece, polygon } from '../garments.ts';

const rectangle = (notches: readonly Notch[], allowance = 12.7): Piece => ({
  ...polygon(
    'front',
    [
      [0, 0],
      [100, 0],
      [100, 200],
      [0, 200],
    ],
    [
      ['top', { allowance }],
      ['right', { allowance }],
      ['bottom', { allowance }],
      ['left', { allowance: 0, turn: 'fold' }],
    ],
  ),
  notches,
});

const ends = (strokes: readonly (readonly Curve[])[] | undefined) =>
  strokes?.map((stroke) => stroke.map(({ from, to }) => [from.x, from.y, to.x, to.y]));

const drawn = (made: Piece, type: 'slit' | 'wedge' = 'slit') => ends(notchStrokes(made, type)[0]?.strokes);

describe('drawing notches', () => {
  it('draws a single slit square to the edge, 4 mm in from the cutting line', () => {
    expect(drawn(rectangle([notch('bust', 'right', 50)]))).toEqual([[[108.7, 50, 112.7, 50]]]);
    expect(drawn(rectangle([notch('bust', 'bottom', 30)]))).toEqual([[[70, 208.7, 70, 212.7]]]);
    expect(drawn(rectangle([notch('bust', 'right', 50)], 25))).toEqual([[[121, 50, 125, 50]]]);
  });

  it('draws those of a dart along its seams, prolonged, from 4 mm in to the cutting line', () => {
    const dart = withDartsMarked(
      piece('front', [
        edge('shoulder', [line(point(0, 0), point(200, 0))]),
        edge('above', [line(point(200, 0), point(200, 100))]),
        edge('leg a', [line(point(200, 100), point(90, 115))]),
        edge('leg b', [line(point(90, 115), point(200, 130))]),
        edge('below', [line(point(200, 130), point(200, 300))]),
        edge('waist', [line(point(200, 300), point(0, 300))]),
        edge('front', [line(point(0, 300), point(0, 0))]),
      ]),
    );
    const slits = notchStrokes(dart, 'slit').flatMap(({ notch: { mark }, strokes }) =>
      mark === 'dart' ? (ends(strokes) ?? []) : [],
    );
    expect(slits).toHaveLength(2);
    for (const [[fromX, fromY, toX, toY] = []] of slits as number[][][]) {
      expect(fromX).toBeCloseTo(206, 9);
      expect(toX).toBeCloseTo(210, 9);
      // Each on its leg's line, which leans by 15 in 110.
      const above = (fromY ?? 0) < 115;
      const onLeg = (x = 0): number => 115 + ((above ? -1 : 1) * ((x - 90) * 15)) / 110;
      expect(fromY).toBeCloseTo(onLeg(fromX), 6);
      expect(toY).toBeCloseTo(onLeg(toX), 6);
    }
  });

  it('never cuts over half of a narrow allowance, and lets a wedge stand out no farther', () => {
    expect(drawn(rectangle([notch('bust', 'right', 50)], 6))).toEqual([[[103, 50, 106, 50]]]);
    const [wedge] = drawn(rectangle([notch('n', 'right', 50)], 6), 'wedge') ?? [];
    expect(Math.max(...(wedge ?? []).map(([x = 0]) => x))).toBe(109);
  });

  it('draws fold, level and gather notches as one slit, double notches as two, 6 mm apart', () => {
    for (const mark of ['fold', 'level', 'gather'] as const) {
      expect(drawn(rectangle([notch('n', 'top', 40, mark)]))).toEqual([[[40, -8.7, 40, -12.7]]]);
    }
    expect(drawn(rectangle([notch('n', 'top', 40, 'double')]))).toEqual([
      [[37, -8.7, 37, -12.7]],
      [[43, -8.7, 43, -12.7]],
    ]);
  });

  it('moves a double notch inward at the end of an edge', () => {
    const xs = (at: number) =>
      drawn(rectangle([notch('n', 'top', at, 'double')]))?.map((stroke) => stroke[0]?.[0]);
    expect(xs(0)).toEqual([0, 6]);
    expect(xs(99)).toEqual([94, 100]);
  });

  it('draws a wedge outward from the cutting line', () => {
    const [wedge] = drawn(rectangle([notch('n', 'right', 50)]), 'wedge') ?? [];
    expect(wedge).toEqual([
      [112.7, 47.5, 116.7, 50],
      [116.7, 50, 112.7, 52.5],
      [112.7, 52.5, 112.7, 47.5],
    ]);
  });

  it('marks an edge without allowance on the cloth instead', () => {
    expect(drawn(rectangle([notch('n', 'left', 50)]))).toEqual([[[0, 150, 4, 150]]]);
  });

  it('stands square on a curve, at its place along the curve', () => {
    // Speed of this cubic is 3 (1 - 2 t (1 - t)): half its length of 2 lies at its middle, (0.5, 0.75); times 100.
    const curved = piece(
      'front',
      [
        edge('top', [cubic(point(0, 0), point(0, -100), point(100, -100), point(100, 0))]),
        edge('bottom', [line(point(100, 0), point(0, 0))]),
      ],
      { notches: [notch('n', 'top', 100)] },
    );
    const stroke = notchStrokes(curved, 'slit')[0]?.strokes[0]?.[0];
    expect(distance(stroke?.from ?? point(0, 0), point(50, -81))).toBeLessThan(1e-5);
    expect(distance(stroke?.to ?? point(0, 0), point(50, -85))).toBeLessThan(1e-5);
  });

  it('leaves out a notch whose edge does not exist', () => {
    expect(notchStrokes(rectangle([notch('n', 'princess', 50)]), 'slit')).toEqual([]);
  });
});
