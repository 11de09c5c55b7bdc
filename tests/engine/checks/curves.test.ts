import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../../engine/checks/bounds.ts';
import { curveFaults } from '../../../engine/checks/curves.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { point, turnedAbout } from '../../../engine/geometry/point.ts';
import { cubic, edge, line, piece } from '../garments.ts';

const faults = (curves: readonly Curve[], inflections = 0) =>
  curveFaults(piece('front', [edge('armhole', curves, { inflections })]), draftBounds.kink);

const hollow = cubic(point(0, 0), point(30, 40), point(70, 40), point(100, 0));

/** A second hollow curve that goes on from the first, turned off its heading by an angle (radians). */
const goingOn = (kink: number): Curve => {
  const turn = (x: number, y: number) => turnedAbout(point(x, y), point(100, 0), kink);
  return cubic(point(100, 0), turn(130, -40), turn(170, -60), turn(230, -60));
};

describe('looking over the curves of an edge', () => {
  it('says nothing of a curve that bends one way, nor of straight lines that run on', () => {
    expect(faults([hollow])).toEqual([]);
    expect(faults([line(point(0, 0), point(50, 0)), line(point(50, 0), point(100, 0))])).toEqual([]);
  });

  it('finds a kink of more than a millionth of a radian', () => {
    expect(faults([hollow, goingOn(0)], 1)).toEqual([]);
    expect(faults([hollow, goingOn(0.9e-6)], 1)).toEqual([]);
    const [issue] = faults([hollow, goingOn(1.1e-6)], 1);
    expect(issue).toMatchObject({ code: 'kink-in-edge', path: 'front/armhole', severity: 'error' });
    expect(issue?.limits?.max).toBeCloseTo(1e-6, 12);
  });

  it('finds an inflection that the edge does not declare, inside a curve or at a joint', () => {
    const wave = cubic(point(0, 0), point(30, 40), point(70, -40), point(100, 0));
    const [issue] = faults([wave]);
    expect(issue).toMatchObject({ code: 'stray-inflection', value: 1, limits: { max: 0, unit: 'count' } });
    expect(issue?.message).toContain('changes once between hollow and round');
    expect(faults([wave], 1)).toEqual([]);
    expect(faults([hollow, goingOn(0)])[0]).toMatchObject({ code: 'stray-inflection', value: 1 });
  });

  it('says how often an edge changes, and how often it may', () => {
    const wave = (x: number) => cubic(point(x, 0), point(x + 30, 40), point(x + 70, -40), point(x + 100, 0));
    const waves = [wave(0), wave(100), wave(200)];
    const says = (count: number, declared: number) => faults(waves.slice(0, count), declared)[0]?.message;
    expect(faults(waves.slice(0, 2), 2).map(({ code }) => code)).toEqual(['stray-inflection']);
    expect(says(1, 0)).toContain('changes once between hollow and round, and should not.');
    expect(says(2, 1)).toContain('changes 3 times between hollow and round, and should no more than once.');
    expect(says(2, 2)).toContain('and should no more than twice.');
    expect(says(3, 4)).toContain(
      'changes 5 times between hollow and round, and should no more than 4 times.',
    );
  });

  it('finds edges that are broken, empty, without extent, pointed or no place at all', () => {
    const reasons = (curves: readonly Curve[]) => faults(curves).map((issue) => issue.code);
    expect(reasons([hollow, line(point(100.1, 0), point(200, 0))])).toEqual(['broken-curve']);
    expect(reasons([])).toEqual(['broken-curve']);
    expect(reasons([line(point(1, 1), point(1, 1))])).toEqual(['broken-curve']);
    expect(reasons([cubic(point(0, 0), point(100, 100), point(0, 100), point(100, 0))])).toEqual([
      'broken-curve',
    ]);
    expect(reasons([line(point(0, 0), point(Number.NaN, 0))])).toEqual(['broken-curve']);
  });
});
