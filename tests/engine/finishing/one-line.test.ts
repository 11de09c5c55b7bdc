import { describe, expect, it } from 'vitest';
import { around, isOneLine, linesAt } from '../../../engine/finishing/one-line.ts';
import { arc } from '../../../engine/geometry/arc.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';
import { edge, line, piece, polygon } from '../garments.ts';

/** A panel whose top is cut into several edges at these places. */
function panel(stops: readonly number[], rest: (i: number) => Partial<PieceEdge> = () => ({})) {
  const xs = [0, ...stops, 100];
  const corners = [...xs.map((x): [number, number] => [x, 0]), [100, 80], [0, 80]] as const;
  return polygon(
    'panel',
    corners,
    corners.map((_, i) => [`e${i}`, i < xs.length - 1 ? { allowance: 10, ...rest(i) } : {}]),
  );
}

describe('an edge and the next', () => {
  it('are one line where they run on at one allowance, made up alike', () => {
    expect(isOneLine(panel([40]), 0)).toBe(true);
    expect(isOneLine(panel([40]), 1)).toBe(false);
    expect(
      isOneLine(
        panel([40], (i) => ({ allowance: 10 + i })),
        0,
      ),
    ).toBe(false);
    expect(
      isOneLine(
        panel([40], (i) => ({ turn: i === 0 ? 'hem' : 'seam' })),
        0,
      ),
    ).toBe(false);
  });

  it('are none where there is a dart, or only one edge all round', () => {
    const darted = panel([40]);
    const [first, ...others] = darted.edges;
    const leg = others.at(-1);
    if (!first || !leg) throw new Error('no edges');
    expect(
      isOneLine({ ...darted, edges: [first, ...others.slice(0, -1), { ...leg, turn: 'dart' }] }, 0),
    ).toBe(false);
    const rim = arc(point(0, 0), { x: 40, y: 0 }, 2 * Math.PI, 0.01).curves;
    const round = piece('cuff', [edge('rim', rim)]);
    expect(isOneLine(round, 0)).toBe(false);
    const eye = [line(point(0, 0), point(9, 0)), line(point(9, 0), point(0, 0))];
    expect(
      isOneLine(
        piece(
          'eye',
          eye.map((each, i) => edge(`${i}`, [each])),
        ),
        0,
      ),
    ).toBe(false);
  });
});

describe('the lines at a corner', () => {
  it('are the edges beside it where these are as long as the allowance is wide', () => {
    expect(linesAt(panel([40]), 1)).toEqual({ before: [1], after: [2] });
    expect(linesAt(panel([40]), 4)).toEqual({ before: [4], after: [0] });
  });

  it('go on over short edges until they are, in the order of the outline', () => {
    expect(linesAt(panel([92]), 1)).toEqual({ before: [0, 1], after: [2] });
    expect(linesAt(panel([92, 96]), 2)).toEqual({ before: [0, 1, 2], after: [3] });
    expect(linesAt(panel([80, 92, 96]), 3)).toEqual({ before: [1, 2, 3], after: [4] });
    expect(linesAt(panel([4, 8]), 5)).toEqual({ before: [5], after: [0, 1, 2] });
    expect(linesAt(panel([4, 12, 50]), 6)).toEqual({ before: [6], after: [0, 1] });
  });

  it('end where the line does', () => {
    expect(
      linesAt(
        panel([92], (i) => ({ allowance: 10 + i })),
        1,
      ),
    ).toEqual({ before: [1], after: [2] });
  });
});

it('a place is counted on round the outline', () => {
  expect([around(-1, 4), around(0, 4), around(3, 4), around(4, 4)]).toEqual([3, 0, 3, 0]);
});
