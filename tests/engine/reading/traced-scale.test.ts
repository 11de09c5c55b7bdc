import { describe, expect, test } from 'vitest';
import { outlineCurves } from '../../../engine/geometry/outline.ts';
import type { DrawnLine } from '../../../engine/reading/read-shapes.ts';
import { tracedScale } from '../../../engine/reading/traced-scale.ts';
import { polygon } from '../geometry/generators.ts';

const element = { name: 'rect', attributes: {}, text: '', transformed: false, parent: undefined };
const drawn = (...corners: readonly (readonly [number, number])[]): DrawnLine => ({
  element,
  closed: true,
  curves: outlineCurves(polygon(...corners)),
});
const square = (side: number, wider = 0): DrawnLine =>
  drawn([0, 0], [side + wider, 0], [side + wider, side], [0, side]);

const root = (width: string) => ({
  ...element,
  attributes: { width, height: width, viewBox: '0 0 100 100' },
});

function scale(squares: readonly DrawnLine[], told?: number, width?: string) {
  const read = tracedScale(width === undefined ? undefined : root(width), squares, told);
  return read.ok
    ? [read.value.scaleFrom, Number(read.value.mmPerUnit.toFixed(9)), ...read.issues.map(({ code }) => code)]
    : read.issues.map(({ code }) => code);
}

describe('the scale of a traced drawing', () => {
  test('is the one told, then that of the smallest square, then that of the drawing', () => {
    expect(scale([square(100), square(101.6)], 0.5, '50mm')).toEqual(['given', 0.5]);
    expect(scale([square(101.6), square(100)], undefined, '50mm')).toEqual(['square', 0.5]);
    expect(scale([], undefined, '50mm')).toEqual(['drawing', 0.5, 'scale-from-drawing']);
    expect(scale([], undefined, '50px')).toEqual(['scale-unknown']);
    expect(scale([])).toEqual(['scale-unknown']);
  });

  test('is said to differ where another way to tell it differs by more than a hundredth', () => {
    expect(scale([square(100)], 0.504)).toEqual(['given', 0.504]);
    expect(scale([square(100)], 0.51)).toEqual(['given', 0.51, 'scales-differ']);
    expect(scale([square(100)], 0.49)).toEqual(['given', 0.49, 'scales-differ']);
    expect(scale([square(100)], undefined, '51mm')).toEqual(['square', 0.5, 'scales-differ']);
    expect(scale([square(100)], undefined, '51px')).toEqual(['square', 0.5]);
  });

  test('is a number above nothing', () => {
    for (const told of [0, -1, 1e4, Number.NaN, Number.POSITIVE_INFINITY])
      expect(scale([square(100)], told)).toEqual(['scale-not-a-number']);
  });

  test.each([
    ['a rectangle', square(100, 3)],
    ['a rhombus', drawn([0, 0], [100, 0], [150, 86.6], [50, 86.6])],
    ['a triangle', drawn([0, 0], [100, 0], [50, 86.6])],
    ['a pentagon', drawn([0, 0], [100, 0], [130, 60], [50, 100], [-30, 60])],
    ['nothing', drawn([0, 0], [0, 0], [0, 0], [0, 0])],
  ])('is not told by %s', (_, line) => {
    expect(scale([line])).toEqual(['square-not-square']);
    expect(scale([line], 2)).toEqual(['given', 2, 'square-missing']);
    expect(scale([line, square(100)])).toEqual(['square', 0.5]);
  });

  test('is told by the mean of a square’s sides, be it skew or turned a little', () => {
    const skew = scale([square(100, 0.8)]);
    expect(skew).toEqual(['square', Number((50 / 100.4).toFixed(9))]);
    expect(scale([drawn([0, 0], [60, 80], [-20, 140], [-80, 60])])).toEqual(['square', 0.5]);
    expect(scale([drawn([0, 0], [0, 0], [100, 0], [100, 100], [0, 100])])).toEqual(['square', 0.5]);
  });
});
