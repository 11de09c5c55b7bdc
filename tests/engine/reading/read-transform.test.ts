import { describe, expect, test } from 'vitest';
import { point } from '../../../engine/geometry/point.ts';
import { byMatrix, product, readTransform, unmoved } from '../../../engine/reading/read-transform.ts';

/** Where a transform puts a point; nothing when it is none. */
function put(text: string, x: number, y: number) {
  const matrix = readTransform(text);
  if (!matrix) return undefined;
  const at = byMatrix(matrix)(point(x, y));
  return [at.x, at.y].map((value) => Math.round(value * 1e9) / 1e9 + 0);
}

describe('a transform', () => {
  // Closed forms: CSS Transforms 1, section 8.
  test.each([
    ['translate(3 -4)', [13, 16]],
    ['translate(3)', [13, 20]],
    ['scale(2 3)', [20, 60]],
    ['scale(2)', [20, 40]],
    ['rotate(90)', [-20, 10]],
    ['rotate(90 1 2)', [-17, 11]],
    ['rotate(90deg, 1px, 2px)', [-17, 11]],
    ['skewX(45)', [30, 20]],
    ['skewY(45)', [10, 30]],
    ['matrix(1 2 3 4 5 6)', [75, 106]],
    ['none', [10, 20]],
    ['  ', [10, 20]],
    ['translate(5 0) scale(2)', [25, 40]],
    ['scale(2), translate(5 0)', [30, 40]],
  ])('%s puts (10, 20) to %j', (text, place) => {
    expect(put(text, 10, 20)).toEqual(place);
  });

  test.each([
    'rotate(90 1)',
    'rotate()',
    'translate(1 2 3)',
    'scale(1 2 3)',
    'skewX(1 2)',
    'skewY(1 2)',
    'matrix(1 2 3)',
    'turn(3)',
    'scale(2',
    'scale(x)',
    'scale(1e9)',
    'skewX(90)',
  ])('%s is none', (text) => {
    expect(readTransform(text)).toBeUndefined();
  });

  test('before another is their product, part by part', () => {
    const [a, b] = [
      { a: 2, b: 3, c: 5, d: 7, e: 11, f: 13 },
      { a: 17, b: 19, c: 23, d: 29, e: 31, f: 37 },
    ];
    for (const p of [point(0, 0), point(1, 0), point(0, 1), point(-4, 9)])
      expect(byMatrix(product(a, b))(p)).toEqual(byMatrix(a)(byMatrix(b)(p)));
    expect(product(unmoved, a)).toEqual(a);
    expect(product(a, unmoved)).toEqual(a);
  });
});
