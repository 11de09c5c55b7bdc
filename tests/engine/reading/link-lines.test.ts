import { describe, expect, test } from 'vitest';
import { linked } from '../../../engine/reading/link-lines.ts';
import type { DrawnLine } from '../../../engine/reading/read-shapes.ts';
import { line } from '../geometry/generators.ts';

const element = { name: 'path', attributes: {}, text: '', transformed: false, parent: undefined };
const drawn = (...ends: readonly [number, number, number, number]): DrawnLine => ({
  element,
  closed: false,
  curves: [line(...ends)],
});

/** The corners of a loop in order. */
function corners(lines: readonly DrawnLine[], within = 1) {
  const loop = linked(lines, within);
  return loop.closed
    ? loop.lines.flatMap(({ curves }) => curves.map(({ from, to }) => [from.x, from.y, to.x, to.y]))
    : loop;
}

const [top, right, bottom, left] = [
  drawn(0, 0, 9, 0),
  drawn(9, 0, 9, 9),
  drawn(9, 9, 0, 9),
  drawn(0, 9, 0, 0),
];
const square = [
  [0, 0, 9, 0],
  [9, 0, 9, 9],
  [9, 9, 0, 9],
  [0, 9, 0, 0],
];

describe('open lines', () => {
  test('are linked to a loop in whatever order and direction they were drawn', () => {
    expect(corners([top, right, bottom, left])).toEqual(square);
    expect(corners([top, left, right, bottom])).toEqual(square);
    expect(corners([top, drawn(0, 0, 0, 9), drawn(0, 9, 9, 9), drawn(9, 9, 9, 0)])).toEqual(square);
  });

  test('that nearly meet are brought together, and the widest gap is told', () => {
    const loop = linked([top, drawn(9.3, 0, 9, 9), bottom, drawn(0.5, 9, 0, 0.2)], 1);
    expect(loop).toMatchObject({ closed: true, gap: 0.5 });
    expect(corners([top, drawn(9.3, 0, 9, 9), bottom, drawn(0.5, 9, 0, 0.2)])).toEqual([
      [0, 0.2, 9, 0],
      [9, 0, 9, 9],
      [9, 9, 0, 9],
      [0, 9, 0, 0.2],
    ]);
  });

  test('whose last gap is the widest tell that', () => {
    expect(linked([top, right, bottom, drawn(0, 9, 0, 0.7)], 1)).toMatchObject({ closed: true, gap: 0.7 });
  });

  test('that leave a wider gap are no loop: how wide it is, and where', () => {
    expect(linked([top, right, bottom, drawn(0, 9, 0, 2)], 1)).toEqual({
      closed: false,
      gap: 2,
      at: { x: 0, y: 2 },
    });
    expect(linked([top, drawn(9, 3, 9, 9), bottom], 1)).toEqual({
      closed: false,
      gap: 3,
      at: { x: 9, y: 0 },
    });
    expect(linked([top, right], 1)).toMatchObject({
      closed: false,
      gap: expect.closeTo(Math.hypot(9, 9), 9),
    });
    expect(linked([], 1)).toMatchObject({ closed: false });
  });

  test('go on to a nearer line before they close', () => {
    // The end of the third lies 0.5 from the start, and on the start of a fourth.
    const nearly = [top, right, drawn(9, 9, 0, 0.5), drawn(0, 0.5, 0, 0)];
    expect(corners(nearly)).toHaveLength(4);
    // What is farther off than home is left out.
    expect(corners([top, right, drawn(9, 9, 0, 0), drawn(0, 0.5, 20, 20)])).toHaveLength(3);
  });
});
