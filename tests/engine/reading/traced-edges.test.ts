import { describe, expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import { clockwise, edgesAtCorners } from '../../../engine/reading/traced-edges.ts';
import { cubic, line } from '../geometry/generators.ts';

const square: readonly Curve[] = [
  line(50, 0, 50, 50),
  line(50, 50, 0, 50),
  line(0, 50, 0, 0),
  line(0, 0, 50, 0),
];
const corner = (25 * Math.PI) / 180;

describe('a closed chain', () => {
  test('is walked clockwise, whichever way it was drawn', () => {
    expect(clockwise(square)).toEqual(square);
    expect(clockwise(square.toReversed().map(reversed))).toEqual(square);
  });

  test('loses slips of the pen, and closes where it began', () => {
    const slip = [
      line(50, 0, 50, 50),
      line(50, 50, 50.006, 50.006),
      line(50.006, 50.006, 0, 50),
      line(0, 50, 0, 0),
      line(0, 0, 49.999, 0),
    ];
    expect(clockwise(slip)).toEqual(square);
    expect(clockwise([...square.slice(0, 3), line(0, 0, 0.02, 0), line(0.02, 0, 50, 0)])).toHaveLength(5);
  });

  test('keeps a loop that comes back to where it began', () => {
    const eye = [cubic(0, 0, 60, -60, 60, 60, 0, 0)];
    expect(clockwise(eye)).toEqual(eye);
    expect(signedArea([{ name: '', curves: clockwise(eye.map(reversed)) }])).toBeGreaterThan(0);
    expect(clockwise([cubic(0, 0, 0.005, 0, 0, 0.005, 0, 0)])).toEqual([]);
    expect(clockwise([cubic(0, 0, 5, 0, 0, 0.005, 0, 0), cubic(0, 0, 0.005, 0, 0, 5, 0, 0)])).toHaveLength(2);
  });
});

describe('the edges of a chain', () => {
  test('run from corner to corner, the first from the one nearest to the top left', () => {
    expect(edgesAtCorners(square, corner)).toEqual([
      { name: 'edge 1', curves: [line(0, 0, 50, 0)] },
      { name: 'edge 2', curves: [line(50, 0, 50, 50)] },
      { name: 'edge 3', curves: [line(50, 50, 0, 50)] },
      { name: 'edge 4', curves: [line(0, 50, 0, 0)] },
    ]);
  });

  test('run on over joints that turn by less than a corner, either way', () => {
    const bent = [
      line(0, 0, 50, 10),
      line(50, 10, 100, 0),
      line(100, 0, 100, 90),
      line(100, 90, 0, 90),
      line(0, 90, 0, 0),
    ];
    const [first, ...others] = edgesAtCorners(bent, corner);
    expect(first?.curves).toEqual(bent.slice(0, 2));
    expect(others).toHaveLength(3);
    expect(edgesAtCorners(bent, 0.3)).toHaveLength(5);
  });

  test('that begin in the middle of the chain go round its end', () => {
    const round = [
      line(50, 20, 50, 50),
      line(50, 50, 0, 50),
      line(0, 50, 0, 0),
      line(0, 0, 50, 0),
      line(50, 0, 50, 20),
    ];
    expect(edgesAtCorners(round, corner)[1]?.curves).toEqual([line(50, 0, 50, 20), line(50, 20, 50, 50)]);
  });

  test('are one where there is no corner, and one that begins at it where there is one', () => {
    expect(edgesAtCorners(square, 2)).toEqual([{ name: 'edge 1', curves: square }]);
    const drop = [
      cubic(30, 30, 30, 60, -30, 60, -30, 30),
      cubic(-30, 30, -30, 10, -10, 0, 0, -20),
      cubic(0, -20, 10, 0, 30, 10, 30, 30),
    ];
    expect(edgesAtCorners(drop, corner)).toEqual([{ name: 'edge 1', curves: [drop[2], drop[0], drop[1]] }]);
  });
});
