import { describe, expect, it } from 'vitest';
import { outlineFaults } from '../../../engine/checks/outlines.ts';
import { point } from '../../../engine/geometry/point.ts';
import { edge, line, piece, polygon } from '../garments.ts';

const sides = [
  ['top', {}],
  ['side', {}],
  ['bottom', {}],
  ['centre', { turn: 'fold', allowance: 0 }],
] as const;

const corners = [
  [0, 0],
  [100, 0],
  [100, 200],
  [0, 200],
] as const;

const rectangle = polygon('front', corners, sides);

const codes = (...args: Parameters<typeof outlineFaults>) =>
  outlineFaults(...args).map((issue) => issue.code);

describe('looking over an outline', () => {
  it('says nothing of a closed clockwise piece with its grainline inside', () => {
    expect(outlineFaults(rectangle)).toEqual([]);
  });

  it('finds an outline that does not close', () => {
    const open = piece('front', [
      edge('top', [line(point(0, 0), point(100, 0))]),
      edge('side', [line(point(100, 0), point(100, 200))]),
      edge('bottom', [line(point(99.8, 200), point(0, 200))]),
      edge('centre', [line(point(0, 200), point(0, 0))]),
    ]);
    const [issue] = outlineFaults(open);
    expect(issue).toMatchObject({ code: 'outline-open', path: 'front/side' });
    expect(issue?.message).toContain('open by 0.2 mm between "side" and "bottom"');
  });

  it('finds an outline that runs anticlockwise', () => {
    expect(codes(polygon('front', corners.toReversed(), sides))).toEqual(['outline-anticlockwise']);
  });

  it('finds a grainline that leaves the piece, lies beside it, or has no length', () => {
    const grain = (x1: number, y1: number, x2: number, y2: number) =>
      codes({ ...rectangle, grain: { from: point(x1, y1), to: point(x2, y2) } });
    expect(grain(50, 20, 50, 180)).toEqual([]);
    expect(grain(50, 20, 50, 220)).toEqual(['grainline-outside']);
    expect(grain(150, 20, 150, 180)).toEqual(['grainline-outside']);
    expect(grain(50, 20, 50, 20)).toEqual(['grainline-outside']);
  });

  it('finds an allowance on a fold and an allowance of less than nothing', () => {
    const allowance = (centre: number, side: number) =>
      codes(
        polygon('front', corners, [
          ['top', {}],
          ['side', { allowance: side }],
          ['bottom', {}],
          ['centre', { turn: 'fold', allowance: centre }],
        ]),
      );
    expect(allowance(10, 10)).toEqual(['allowance-on-fold']);
    expect(allowance(0, -1)).toEqual(['allowance-impossible']);
    expect(allowance(0, Number.NaN)).toEqual(['allowance-impossible']);
  });
});
