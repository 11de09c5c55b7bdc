import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../../engine/checks/bounds.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { trueJoins } from '../../../engine/checks/true.ts';
import { point, turnedAbout } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import type { Join } from '../../../engine/pattern/seam.ts';
import { cubic, edge, garment, line, piece, polygon } from '../garments.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A panel 400 mm long whose top meets its right side at an angle inside the cloth, in degrees. */
const panel = (name: string, angle: number): Piece => {
  const corner = point(200, 0);
  const foot = turnedAbout(point(0, 0), corner, -radians(angle));
  return piece(name, [
    edge('top', [line(point(0, 0), corner)]),
    edge('right', [line(corner, foot)]),
    edge('left', [line(foot, point(0, 0))]),
  ]);
};

const mirrored = (name: string, angle: number): Piece => {
  const corner = point(0, 0);
  const foot = turnedAbout(point(200, 0), corner, radians(angle));
  return piece(name, [
    edge('top', [line(corner, point(200, 0))]),
    edge('right', [line(point(200, 0), foot)]),
    edge('left', [line(foot, corner)]),
  ]);
};

const across: Join = {
  kind: 'across',
  name: 'armhole over the princess seam',
  a: { piece: 'centre', edge: 'top', seam: 'right' },
  b: { piece: 'side', edge: 'top', seam: 'left' },
};

function trued(pieces: readonly Piece[], joins: readonly Join[]) {
  const sewn = garment(pieces, { joins });
  return trueJoins(sewn, tapeFor(sewn), draftBounds.join);
}

describe('truing a join', () => {
  it('finds two corners that make a straight angle true, whatever they are', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 160, noNaN: true }), (angle) => {
        const { joins, issues } = trued([panel('centre', angle), mirrored('side', 180 - angle)], [across]);
        expect(joins[0]?.angle).toBeCloseTo(0, 9);
        expect(joins[0]?.pieces).toEqual(['centre', 'side']);
        expect(issues).toEqual([]);
      }),
    );
  });

  it('finds a corner one degree off, and tells a point from a dent', () => {
    const point1 = trued([panel('centre', 99), mirrored('side', 80)], [across]);
    expect(point1.joins[0]?.angle).toBeCloseTo(-1, 9);
    expect(point1.issues[0]).toMatchObject({ code: 'join-not-true', path: 'armhole over the princess seam' });
    expect(point1.issues[0]?.message).toContain('a point of 1°');

    const dent = trued([panel('centre', 101), mirrored('side', 80)], [across]);
    expect(dent.joins[0]?.angle).toBeCloseTo(1, 9);
    expect(dent.issues[0]?.message).toContain('a dent of 1°');
  });

  it('keeps silent up to half a degree', () => {
    expect(trued([panel('centre', 100.49), mirrored('side', 80)], [across]).issues).toEqual([]);
    expect(trued([panel('centre', 100.51), mirrored('side', 80)], [across]).issues).toHaveLength(1);
  });

  it('asks a line that crosses a fold to meet it square', () => {
    const fold = (angle: number) =>
      trued(
        [panel('centre', angle)],
        [{ kind: 'mirror', name: 'neckline', a: { piece: 'centre', edge: 'top', seam: 'right' } }],
      );
    expect(fold(90).issues).toEqual([]);
    expect(fold(89).joins[0]?.angle).toBeCloseTo(-2, 9);
    expect(fold(89).issues).toHaveLength(1);
  });

  it('asks one edge to run on into the next', () => {
    const along = (bend: number) => {
      const knee = point(100, 0);
      const end = turnedAbout(point(200, 0), knee, radians(bend));
      const armhole = piece('front', [
        edge('strap', [line(point(0, 0), knee)]),
        edge('armhole', [cubic(knee, turnedAbout(point(130, 0), knee, radians(bend)), point(180, 30), end)]),
        edge('side', [line(end, point(0, 100)), line(point(0, 100), point(0, 0))]),
      ]);
      return trued(
        [armhole],
        [{ kind: 'along', name: 'strap into armhole', piece: 'front', from: 'strap', to: 'armhole' }],
      );
    };
    expect(along(0).joins[0]).toMatchObject({ name: 'strap into armhole', pieces: ['front'] });
    expect(along(0).issues).toEqual([]);
    expect(along(1).joins[0]?.angle).toBeCloseTo(-1, 9);
    expect(along(-1).joins[0]?.angle).toBeCloseTo(1, 9);
    expect(along(1).issues).toHaveLength(1);
  });

  it('says so when the two edges of a corner do not follow one another', () => {
    const square = polygon(
      'front',
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      [
        ['top', {}],
        ['right', {}],
        ['bottom', {}],
        ['left', {}],
      ],
    );
    const apart = { piece: 'front', edge: 'top', seam: 'bottom' };
    const { joins, issues } = trued(
      [square],
      [
        { kind: 'mirror', name: 'neckline', a: apart },
        { kind: 'along', name: 'hem', piece: 'front', from: 'right', to: 'top' },
      ],
    );
    expect(joins).toEqual([]);
    expect(issues.map((issue) => issue.code)).toEqual(['edges-do-not-meet', 'edges-do-not-meet']);
  });
});
