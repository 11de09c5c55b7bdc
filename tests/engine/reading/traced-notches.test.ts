import { describe, expect, test } from 'vitest';
import type { DrawnLine } from '../../../engine/reading/read-shapes.ts';
import { tracedNotches } from '../../../engine/reading/traced-notches.ts';
import { line } from '../geometry/generators.ts';

/** A corner: one edge runs 100 mm to the right, the next 100 mm down. */
const edges = [
  { name: 'top', curves: [line(0, 0, 100, 0)] },
  { name: 'side', curves: [line(100, 0, 100, 100)] },
];

function stroke(
  ends: readonly [number, number, number, number],
  attributes: Readonly<Record<string, string>> = {},
): DrawnLine {
  const parent = { name: 'svg', attributes: {}, text: '', transformed: false, parent: undefined };
  return {
    element: { name: 'path', attributes, text: '', transformed: false, parent },
    closed: false,
    curves: [line(...ends)],
  };
}

const notches = (...strokes: readonly DrawnLine[]) =>
  tracedNotches(strokes, edges).notches.map(({ name, edge, at, mark }) => [
    name,
    edge,
    Number(at.toFixed(6)),
    mark,
  ]);

describe('a traced notch', () => {
  test('stands where the outline is nearest to either of its ends', () => {
    expect(notches(stroke([30, -10, 30, -4]), stroke([104, 60, 110, 60]))).toEqual([
      ['notch 1', 'top', 30, 'single'],
      ['notch 2', 'side', 60, 'single'],
    ]);
    expect(notches(stroke([30, 5, 36, -5]))).toEqual([['notch 1', 'top', 30, 'single']]);
    expect(notches(stroke([30, 5, 36, -4]))).toEqual([['notch 1', 'top', 36, 'single']]);
  });

  test('stands on the edge it names, be another nearer', () => {
    expect(notches(stroke([96, 20, 90, 20], { 'data-edge': 'top' }))).toEqual([
      ['notch 1', 'top', 96, 'single'],
    ]);
    expect(notches(stroke([96, 20, 90, 20], { 'data-edge': 'hem' }))).toEqual([
      ['notch 1', 'side', 20, 'single'],
    ]);
  });

  test('is one where several strokes bear one name on one edge, in their middle', () => {
    const double = { id: 'hip', class: 'double' };
    expect(notches(stroke([30, -9, 30, -4], double), stroke([36, -9, 36, -4], double))).toEqual([
      ['hip', 'top', 33, 'double'],
    ]);
    expect(notches(stroke([30, -9, 30, -4], double), stroke([109, 40, 104, 40], double))).toEqual([
      ['hip', 'top', 30, 'double'],
      ['hip', 'side', 40, 'double'],
    ]);
  });

  test('is what its marks say, and single where they say nothing', () => {
    for (const mark of ['single', 'double', 'fold', 'level', 'gather'])
      expect(notches(stroke([30, -9, 30, -4], { class: `notch ${mark}` }))[0]?.[3]).toBe(mark);
    expect(notches(stroke([30, -9, 30, -4], { id: 'dart' }))[0]?.[3]).toBe('single');
  });

  test('at a dart stands where it points', () => {
    expect(notches(stroke([30, -10, 32, -5], { 'data-kind': 'dart' }))).toEqual([
      ['notch 1', 'top', 34, 'dart'],
    ]);
  });

  test('is left out, with a word, where it stands nowhere near', () => {
    const { notches: found, issues } = tracedNotches(
      [stroke([30, -70, 30, -56], { id: 'far' }), stroke([30, -70, 30, -54])],
      edges,
    );
    expect(found.map(({ name }) => name)).toEqual(['notch 2']);
    expect(issues).toMatchObject([{ code: 'notch-far', path: 'far' }]);
  });
});
