import { describe, expect, it } from 'vitest';
import { liesIn, spansAt } from '../../../engine/finishing/spans.ts';
import { point } from '../../../engine/geometry/point.ts';

/** A U: two legs of 10 on a foot of 30 by 10, 40 high. */
const u = [
  point(0, 0),
  point(10, 0),
  point(10, 30),
  point(20, 30),
  point(20, 0),
  point(30, 0),
  point(30, 40),
  point(0, 40),
];

describe('the spans inside a polygon', () => {
  it('are two across the legs of a U, and one across its foot', () => {
    expect(spansAt(u, 'y', 15)).toEqual([
      [0, 10],
      [20, 30],
    ]);
    expect(spansAt(u, 'y', 35)).toEqual([[0, 30]]);
    expect(spansAt(u, 'x', 15)).toEqual([[30, 40]]);
  });

  it('are none beside it, and as many through a corner as on one side of it', () => {
    expect(spansAt(u, 'y', -1)).toEqual([]);
    expect(spansAt(u, 'y', 41)).toEqual([]);
    expect(spansAt(u, 'y', 30)).toHaveLength(2);
    expect(spansAt(u.toReversed(), 'x', 10)).toHaveLength(1);
  });

  it('take in a length that fits, and no longer one', () => {
    const spans = spansAt(u, 'y', 15);
    expect(liesIn(spans, 25, 10, 0)).toBe(true);
    expect(liesIn(spans, 15, 4, 0)).toBe(false);
    expect(liesIn(spans, 25.5, 10, 0)).toBe(false);
    expect(liesIn(spans, 25.5, 10, 0.5)).toBe(true);
  });
});
