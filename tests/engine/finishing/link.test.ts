import { describe, expect, it } from 'vitest';
import { linked, linkedRound } from '../../../engine/finishing/link.ts';
import { point } from '../../../engine/geometry/point.ts';
import { cubic, line } from '../geometry/generators.ts';

const bow = cubic(20, 0, 25, 5, 25, 10, 20, 15);

describe('curves and points linked to a chain', () => {
  it('are joined by straight lines wherever they do not touch', () => {
    expect(linked([line(0, 0, 10, 0), point(10, 10), bow, point(0, 15)])).toEqual([
      line(0, 0, 10, 0),
      line(10, 0, 10, 10),
      line(10, 10, 20, 0),
      bow,
      line(20, 15, 0, 15),
    ]);
    expect(linked([point(0, 0), point(3, 4)])).toEqual([line(0, 0, 3, 4)]);
    expect(linked([])).toEqual([]);
  });

  it('make one line of several that run straight on, and not of one that turns or runs back', () => {
    expect(linked([line(0, 0, 10, 0), line(10, 0, 20, 0), point(30, 0)])).toEqual([line(0, 0, 30, 0)]);
    expect(linked([line(0, 0, 10, 0), point(4, 0)])).toEqual([line(0, 0, 10, 0), line(10, 0, 4, 0)]);
    expect(linked([line(0, 0, 10, 0), point(20, 1)])).toHaveLength(2);
    expect(linked([line(0, 0, 10, 0), point(20, -1)])).toHaveLength(2);
  });

  it('leave no slivers, and start each curve where the one before ends', () => {
    const near = cubic(20, 1e-7, 25, 5, 25, 10, 20, 15);
    expect(linked([line(0, 0, 20, 0), near])).toEqual([line(0, 0, 20, 0), { ...near, from: point(20, 0) }]);
    expect(linked([line(0, 0, 20, 0), cubic(20, 0, 20, 0, 20, 0, 20, 1e-7), point(20, 9)])).toHaveLength(2);
  });
});

describe('the same linked round', () => {
  it('come back to where they began', () => {
    expect(linkedRound([line(0, 0, 10, 0), point(10, 10)])).toEqual([
      line(0, 0, 10, 0),
      line(10, 0, 10, 10),
      line(10, 10, 0, 0),
    ]);
    const [first, last] = [bow, cubic(20, 15, 0, 15, 0, 0, 20, 1e-7)];
    expect(linkedRound([first, last]).at(-1)?.to).toEqual(first.from);
    expect(linkedRound([])).toEqual([]);
  });

  it('make one line of the last and the first where these run straight on', () => {
    expect(linkedRound([line(5, 0, 10, 0), point(10, 10), point(0, 10), point(0, 0)])).toEqual([
      line(0, 0, 10, 0),
      line(10, 0, 10, 10),
      line(10, 10, 0, 10),
      line(0, 10, 0, 0),
    ]);
  });
});
