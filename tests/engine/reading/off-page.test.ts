import { describe, expect, test } from 'vitest';
import type { Rectangle } from '../../../engine/finishing/rectangle.ts';
import { outlineCurves } from '../../../engine/geometry/outline.ts';
import { point } from '../../../engine/geometry/point.ts';
import { FILE } from '../../../engine/geometry/tolerance.ts';
import { offPage } from '../../../engine/reading/off-page.ts';
import { polygon } from '../geometry/generators.ts';

const page = { width: 200, height: 100 };

const label = (x: number, y: number, width = 20, height = 10): Rectangle => ({
  middle: point(x, y),
  width,
  height,
});

const paths = (labels: readonly Rectangle[], ...corners: readonly (readonly [number, number])[]) => {
  const cut = corners.length > 0 ? outlineCurves(polygon(...corners)) : [];
  return offPage(page, new Map([['yoke', { name: 'cut', curves: cut }]]), labels).map(({ path }) => path);
};

const square = (left: number, top: number, right: number, bottom: number) =>
  paths([], [left, top], [right, top], [right, bottom], [left, bottom]);

describe('what lies off the page', () => {
  test('is a piece that goes beyond any of its sides, by more than a file is rounded', () => {
    expect(square(0, 0, 200, 100)).toEqual([]);
    expect(square(-FILE / 2, -FILE / 2, 200 + FILE / 2, 100 + FILE / 2)).toEqual([]);
    for (const [left, top, right, bottom] of [
      [-2, 0, 200, 100],
      [0, -2, 200, 100],
      [0, 0, 202, 100],
      [0, 0, 200, 102],
    ] as const)
      expect(square(left, top, right, bottom)).toEqual(['yoke']);
    expect(paths([])).toEqual([]);
  });

  test('is a label that goes beyond any of its sides: one issue for all', () => {
    expect(paths([label(10, 5), label(190, 95), label(10, 95), label(190, 5)])).toEqual([]);
    for (const lost of [label(8, 50), label(192, 50), label(100, 3), label(100, 97)])
      expect(paths([label(100, 50), lost, lost])).toEqual(['file']);
  });

  test('is a label too small to be read, or of no size', () => {
    expect(paths([label(100, 50, 20, 0.6), label(100, 50, 0.6, 20)])).toEqual([]);
    for (const lost of [label(100, 50, 20, 0.4), label(100, 50, 0.4, 20), label(100, 50, Number.NaN, 20)])
      expect(paths([lost])).toEqual(['file']);
  });
});
