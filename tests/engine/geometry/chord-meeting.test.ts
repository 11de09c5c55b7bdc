import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstMeeting } from '../../../engine/geometry/chord-meeting.ts';
import { curveCrossings } from '../../../engine/geometry/curve-crossings.ts';
import { uniform } from '../../uniform.ts';
import { line } from './generators.ts';

const flat = (...numbers: readonly number[]): readonly number[] => numbers;
const apartFar = { apart: 5, closes: false };

describe('the first place where chords meet others', () => {
  it('of two single chords is where the lines cross', () => {
    const end = uniform(-50, 50);
    fc.assert(
      fc.property(fc.tuple(end, end, end, end), fc.tuple(end, end, end, end), (a, b) => {
        const found = firstMeeting(flat(...a), flat(...b), apartFar);
        const [crossing] = curveCrossings(line(...a), line(...b));
        // Crossings nearer to an end than a coincidence are told by the one and may not be by the other.
        fc.pre(!crossing || Math.min(crossing.t, crossing.u, 1 - crossing.t, 1 - crossing.u) > 1e-4);
        expect(found === undefined).toBe(crossing === undefined);
        if (!found || !crossing) return;
        expect(found.chord).toBe(0);
        expect(found.s).toBeCloseTo(crossing.t, 6);
        expect(found.t).toBeCloseTo(crossing.u, 6);
      }),
    );
  });

  const zigzag = flat(0, 0, 10, 10, 20, 0, 30, 10, 40, 0);

  it('is the first along the first chain, by the share of each', () => {
    expect(firstMeeting(zigzag, flat(-9, 5, 60, 5), apartFar)).toEqual({ chord: 0, s: 0.125, t: 14 / 69 });
    expect(firstMeeting(zigzag, flat(12, 5, 60, 5), apartFar)).toEqual({ chord: 1, s: 0.375, t: 3 / 48 });
    expect(firstMeeting(zigzag, flat(90, 90, 60, 5, 12, 5), apartFar)).toEqual({
      chord: 1,
      s: 0.375,
      t: (1 + 45 / 48) / 2,
    });
    expect(firstMeeting(zigzag, flat(0, 11, 40, 11), apartFar)).toBeUndefined();
  });

  it('counts no chords that follow each other: of one chain, of one and the next, of the last and the first', () => {
    expect(firstMeeting(zigzag, zigzag, { apart: 0, closes: false })).toBeUndefined();
    const loop = flat(0, 0, 20, 20, 20, 0, 0, 20);
    expect(firstMeeting(loop, loop, { apart: 0, closes: false })).toEqual({
      chord: 0,
      s: 0.5 / 3,
      t: 2.5 / 3,
    });
    const next = flat(40, 0, 50, 10, 60, 0);
    expect(firstMeeting(zigzag, next, { apart: 1, closes: false })).toBeUndefined();
    expect(firstMeeting(zigzag, next, { apart: 2, closes: false })).toMatchObject({ chord: 3, s: 1, t: 0 });
    const last = flat(-20, 0, -10, 10, 0, 0);
    expect(firstMeeting(zigzag, last, { apart: 7, closes: true })).toBeUndefined();
    expect(firstMeeting(zigzag, last, { apart: 7, closes: false })).toMatchObject({ chord: 0, s: 0, t: 1 });
    // Any other chord of these counts.
    expect(firstMeeting(zigzag, flat(40, 0, 50, 10, 0, 8), { apart: 1, closes: false })?.chord).toBe(0);
    expect(firstMeeting(zigzag, flat(20, 20, 10, -10, 0, 0), { apart: 7, closes: true })?.chord).toBe(1);
  });

  it('are none of parallel chords, and none beside their ends', () => {
    expect(firstMeeting(flat(0, 0, 10, 0), flat(0, 1, 10, 1), apartFar)).toBeUndefined();
    expect(firstMeeting(flat(0, 0, 10, 0), flat(5, 0, 15, 0), apartFar)).toBeUndefined();
    expect(firstMeeting(flat(0, 0, 10, 0), flat(11, -5, 11, 5), apartFar)).toBeUndefined();
    expect(firstMeeting(flat(0, 0, 10, 0), flat(-1, -5, -1, 5), apartFar)).toBeUndefined();
    expect(firstMeeting(flat(0, 0, 10, 0), flat(5, 1, 5, 5), apartFar)).toBeUndefined();
    expect(firstMeeting(flat(0, 0, 10, 0), flat(5, -5, 5, -1), apartFar)).toBeUndefined();
  });
});
