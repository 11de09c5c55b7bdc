import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { chordPoints, evenPoints } from '../../../engine/geometry/chords.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { nearestOnCurve } from '../../../engine/geometry/nearest.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { roughLength } from '../../../engine/geometry/rough-length.ts';
import { part, reversed, split } from '../../../engine/geometry/split.ts';
import { uniform } from '../../uniform.ts';
import { anyCurve, line } from './generators.ts';

const share = uniform(0.01, 0.99);

describe('a part of a curve', () => {
  it('is the one that splitting gives, to the bit', () => {
    fc.assert(
      fc.property(anyCurve, share, (curve, t) => {
        const [before, after] = split(curve, t);
        expect(part(curve, 0, t)).toEqual(before);
        expect(part(curve, t, 1)).toEqual(after);
      }),
    );
  });

  it('runs where the curve runs, from place to place', () => {
    fc.assert(
      fc.property(anyCurve, share, share, share, (curve, a, b, t) => {
        const [start, end] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(end - start > 0.001);
        const cut = part(curve, start, end);
        expect(distance(pointAt(cut, t), pointAt(curve, start + t * (end - start)))).toBeLessThan(1e-6);
        const [before, after] = split(curve, a);
        expect(before.to).toEqual(after.from);
        expect(distance(pointAt(before, t), pointAt(curve, a * t))).toBeLessThan(1e-6);
        expect(distance(pointAt(after, t), pointAt(curve, a + t * (1 - a)))).toBeLessThan(1e-6);
        expect(distance(pointAt(reversed(curve), t), pointAt(curve, 1 - t))).toBeLessThan(1e-6);
      }),
    );
  });

  it('keeps whole ends to the bit', () => {
    fc.assert(
      fc.property(anyCurve, share, (curve, t) => {
        expect(part(curve, 0, t).from).toEqual(curve.from);
        expect(part(curve, t, 1).to).toEqual(curve.to);
        expect(part(curve, 0, 1)).toBe(curve);
        expect(reversed(reversed(curve))).toEqual(curve);
      }),
    );
  });
});

describe('the chords of a curve', () => {
  it('end on the curve at even steps, and stay within the flatness', () => {
    fc.assert(
      fc.property(anyCurve, fc.constantFrom(1, 0.1), (curve, flatness) => {
        const flat = chordPoints(curve, flatness);
        const count = flat.length / 2 - 1;
        const at = (i: number) => point(flat[2 * i] ?? Number.NaN, flat[2 * i + 1] ?? Number.NaN);
        for (let i = 0; i <= count; i++) {
          expect(distance(at(i), pointAt(curve, i / count))).toBeLessThan(1e-6);
          if (i === 0) continue;
          const middle = point((at(i).x + at(i - 1).x) / 2, (at(i).y + at(i - 1).y) / 2);
          expect(nearestOnCurve(curve, middle).distance).toBeLessThanOrEqual(flatness + 1e-9);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('are no more than it takes: a line is one, and four times as flat is twice as many', () => {
    expect([...chordPoints(line(1, 2, 3, 4), 0.1)]).toEqual([1, 2, 3, 4]);
    expect([...evenPoints(line(0, 0, 4, 8), 4)]).toEqual([0, 0, 1, 2, 2, 4, 3, 6, 4, 8]);
    // |B"| is 6 |(0, 0) - 2 (0, 100) + (100, 100)| = 600 sqrt 2 at both ends: sqrt(600 sqrt 2 / (8 f)) chords.
    const bow = {
      kind: 'cubic',
      from: point(0, 0),
      handle1: point(0, 100),
      handle2: point(100, 100),
      to: point(100, 0),
    } as const;
    for (const [flatness, count] of [
      [1, 11],
      [0.25, 21],
      [1000, 1],
    ] as const)
      expect(chordPoints(bow, flatness).length / 2 - 1).toBe(count);
  });
});

describe('a rough length', () => {
  it('is exceeded by no part of a curve, and no more than three times the longest leg', () => {
    fc.assert(
      fc.property(anyCurve, share, share, (curve, a, b) => {
        const [start, end] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(end > start);
        const length = arcLength(part(curve, start, end), 1e-6);
        expect(length).toBeLessThanOrEqual((end - start) * roughLength(curve) + 1e-6);
      }),
    );
    expect(roughLength(line(0, 0, 3, 4))).toBe(5);
    expect(
      roughLength({
        kind: 'cubic',
        from: point(0, 0),
        handle1: point(0, 2),
        handle2: point(3, 2),
        to: point(3, 1),
      }),
    ).toBe(9);
  });
});
