import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isClosed } from '../../../engine/checks/outlines.ts';
import { arc } from '../../../engine/geometry/arc.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { heading, scaled } from '../../../engine/geometry/vector.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { dartsOf, drawnShort } from '../../../engine/shaping/darts.ts';
import { type Pivot, pivotDart } from '../../../engine/shaping/pivot-dart.ts';
import { line } from '../geometry/generators.ts';
import { codesOf, edge, edgeNamed, made, pieceOf } from './pieces.ts';

const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** A front with a dart of this intake in its waist, legs to (100, 150). */
const front = (intake: number): Piece =>
  pieceOf(
    [
      edge('shoulder', line(0, 0, 200, 20)),
      edge('side', line(200, 20, 220, 300)),
      edge('waist side', line(220, 300, 100 + intake / 2, 300)),
      edge('leg a', line(100 + intake / 2, 300, 100, 150)),
      edge('leg b', line(100, 150, 100 - intake / 2, 300)),
      edge('waist front', line(100 - intake / 2, 300, 0, 300)),
      edge('front', line(0, 300, 0, 0)),
    ],
    [
      { name: 'bust', edge: 'side', at: 100, mark: 'single' },
      { name: 'waist', edge: 'waist side', at: 30, mark: 'single' },
    ],
    10,
  );

const pivoted = (piece: Piece, how: Partial<Pivot> = {}): Piece =>
  made(pivotDart(piece, { to: { edge: 'side', at: 140 }, share: 1, ...how })).piece;

/** A disc of radius 10 mm times ten with a dart of this angle at its middle: closed, it is a cone. */
function disc(angle: number): Piece {
  const [centre, radius] = [point(0, 0), 100];
  const rim = arc(centre, scaled(heading(angle / 2), radius), 2 * Math.PI - angle, 1e-9).curves;
  const [from, to] = [rim[0]?.from ?? centre, rim.at(-1)?.to ?? centre];
  return pieceOf(
    [
      edge('rim', ...rim),
      edge('leg a', { kind: 'line', from: to, to: centre }),
      edge('leg b', { kind: 'line', from: centre, to: from }),
    ],
    [],
    -40,
  );
}

describe('the darts of an outline', () => {
  test('are found with apex, angle, leg and intake', () => {
    const [dart, another] = dartsOf(front(40).edges);
    expect(another).toBe(undefined);
    expect(dart?.apex).toMatchObject({ x: 100, y: 150 });
    expect(dart?.leg).toBeCloseTo(Math.hypot(20, 150), 9);
    expect(dart?.intake).toBeCloseTo(40, 9);
    expect(dart?.angle).toBeCloseTo(2 * Math.atan(20 / 150), 9);
  });

  test('an outline without one has none', () => {
    expect(dartsOf(front(40).edges.slice(0, 2))).toEqual([]);
  });
});

describe('pivoting a dart', () => {
  test('keeps its angle; its legs are as long as the cut and its intake 2 leg sin(a / 2)', () => {
    const before = dartsOf(front(40).edges)[0];
    const after = dartsOf(pivoted(front(40)).edges)[0];
    const cut = distance(
      point(100, 150),
      point(200 + (20 * 140) / Math.hypot(20, 280), 20 + (280 * 140) / Math.hypot(20, 280)),
    );
    expect(after?.angle).toBeCloseTo(before?.angle ?? 0, 9);
    expect(after?.leg).toBeCloseTo(cut, 9);
    expect(after?.intake).toBeCloseTo(2 * cut * Math.sin((before?.angle ?? 0) / 2), 9);
  });

  test('any dart to any place: angles about the apex sum to what they were, nothing else changes length', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 70, noNaN: true }),
        fc.double({ min: 5, max: 275, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (intake, at, share) => {
          const piece = front(intake);
          const before = dartsOf(piece.edges)[0]?.angle ?? 0;
          const after = pivoted(piece, { to: { edge: 'side', at }, share });
          const darts = dartsOf(after.edges);
          expect(darts).toHaveLength(2);
          expect(darts.reduce((sum, { angle }) => sum + angle, 0)).toBeCloseTo(before, 9);
          expect(darts.map(({ angle }) => angle / before).sort()[0]).toBeCloseTo(
            Math.min(share, 1 - share),
            9,
          );
          for (const name of ['shoulder', 'waist side', 'waist front', 'front'])
            expect(edgeLength(edgeNamed(after, name))).toBeCloseTo(edgeLength(edgeNamed(piece, name)), 9);
          expect(edgeLength(edgeNamed(after, 'side 1')) + edgeLength(edgeNamed(after, 'side 2'))).toBeCloseTo(
            edgeLength(edgeNamed(piece, 'side')),
            6,
          );
          // The cloth is the same, only laid down otherwise.
          expect(signedArea(after.edges)).toBeCloseTo(signedArea(piece.edges), 6);
          expect(isClosed(after.edges)).toBe(true);
          expect(isSimple(drawnShort(after.edges, point(100, 150), 19))).toBe(true);
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('closed, the edge it stood in is one, smooth, and nearly as long as its two parts', () => {
    const after = pivoted(front(40));
    expect(after.edges.map(({ name }) => name).sort()).toEqual(
      ['front', 'shoulder', 'side 1', 'side 2', 'side dart leg 1', 'side dart leg 2', 'waist side'].sort(),
    );
    expect(Math.abs(edgeLength(edgeNamed(after, 'waist side')) - 180)).toBeLessThan(2);
    expect(isClosed(after.edges)).toBe(true);
  });

  test('there and back, it is the same dart again', () => {
    const there = pivoted(front(30));
    const waist = edgeLength(edgeNamed(there, 'waist side'));
    const back = made(pivotDart(there, { to: { edge: 'waist side', at: waist / 2 }, share: 1 })).piece;
    const [was, is] = [dartsOf(front(30).edges)[0], dartsOf(back.edges)[0]];
    expect(is?.angle).toBeCloseTo(was?.angle ?? 0, 9);
    expect(back.edges.map(({ name }) => name)).toContain('side');
  });

  test('notches go with their part and their edge', () => {
    const after = pivoted(front(40), { share: 0.5 });
    expect(after.notches).toEqual([
      { name: 'bust', edge: 'side 1', at: 100, mark: 'single' },
      { name: 'waist', edge: 'waist side', at: 30, mark: 'single' },
    ]);
    const lower = made(pivotDart(front(40), { to: { edge: 'side', at: 60 }, share: 0.5 })).piece;
    expect(lower.notches[0]).toMatchObject({ edge: 'side 2', at: 40 });
  });
});

test('a dart drawn short keeps its mouth; legs go from it to the new point', () => {
  const [before, after] = [front(40).edges, drawnShort(front(40).edges, point(100, 150), 19)];
  expect(dartsOf(after)[0]?.apex).toMatchObject({ x: 100, y: 169 });
  expect(dartsOf(after)[0]?.intake).toBeCloseTo(dartsOf(before)[0]?.intake ?? 0, 9);
  expect(drawnShort(before, point(0, 0), 19)).toEqual(before);
});

describe('a dart closed is a cone', () => {
  // sin(half-apex) = 1 - D / 360; slope = acos(1 - D / 360); intake = 2 leg sin(D / 2) (plane geometry).
  test.each([
    [10, 76.4638, 13.5362, 1.7431],
    [15, 73.4022, 16.5978, 2.6105],
    [18.25, 71.6781, 18.3219, 3.1718],
    [20, 70.8119, 19.1881, 3.473],
    [25, 68.5216, 21.4784, 4.3288],
    [30, 66.4435, 23.5565, 5.1764],
    [40, 62.734, 27.266, 6.8404],
    [60, 56.4427, 33.5573, 10],
  ])('of %d degrees, the same cone wherever it is pivoted to', (angle, halfApex, slope, intake) => {
    const piece = disc((angle * Math.PI) / 180);
    const moved = made(pivotDart(piece, { to: { edge: 'rim', at: 200 }, share: 0.5 })).piece;
    for (const each of [piece, moved]) {
      const rim = each.edges.filter(({ name }) => name.startsWith('rim') && !name.includes('leg'));
      const length = rim.reduce((sum, part) => sum + edgeLength(part), 0);
      const sine = length / (2 * Math.PI * 100);
      expect(degrees(Math.asin(sine))).toBeCloseTo(halfApex, 3);
      expect(degrees(Math.acos(sine))).toBeCloseTo(slope, 3);
    }
    expect((dartsOf(piece.edges)[0]?.intake ?? 0) / 10).toBeCloseTo(intake, 3);
    expect(degrees(dartsOf(moved.edges).reduce((sum, dart) => sum + dart.angle, 0))).toBeCloseTo(angle, 9);
  });
});

describe('a pivot that makes no sense', () => {
  test.each<[string, Partial<Pivot>]>([
    ['no-such-edge', { to: { edge: 'neck', at: 3 } }],
    ['dart-into-itself', { to: { edge: 'leg a', at: 30 } }],
    ['dart-at-corner', { to: { edge: 'side', at: 0 } }],
    ['dart-at-corner', { to: { edge: 'side', at: 900 } }],
    ['share-impossible', { share: 0 }],
    ['share-impossible', { share: 1.5 }],
    ['no-dart', { dart: 'shoulder' }],
  ])('is refused: %s', (code, how) => {
    expect(codesOf(pivotDart(front(40), { to: { edge: 'side', at: 140 }, share: 1, ...how }))).toEqual([
      code,
    ]);
  });

  test('and legs that differ too much are told apart from no dart, with the shorter one and by how much', () => {
    const unequal = pieceOf(
      front(40).edges.map((each) => {
        if (each.name === 'leg b') return edge('leg b', line(100, 150, 80, 307.2));
        return each.name === 'waist front' ? edge('waist front', line(80, 307.2, 0, 300)) : each;
      }),
    );
    const refused = pivotDart(unequal, { to: { edge: 'side', at: 140 }, share: 1 });
    expect(codesOf(refused)).toEqual(['dart-legs-differ']);
    const difference = Math.hypot(20, 157.2) - Math.hypot(20, 150);
    expect(refused.issues[0]).toMatchObject({
      value: expect.closeTo(difference, 9),
      limits: { max: 3, unit: 'mm' },
      message: expect.stringMatching(/“leg a” is 7\.1 mm shorter.*fold the dart shut/),
    });
    const another = pivotDart(unequal, { dart: 'shoulder', to: { edge: 'side', at: 140 }, share: 1 });
    expect(codesOf(another)).toEqual(['no-dart']);
  });

  test('and so is one where the piece has no dart, or two to choose from', () => {
    const none = pieceOf(front(40).edges.slice(0, 2));
    expect(codesOf(pivotDart(none, { to: { edge: 'side', at: 140 }, share: 1 }))).toEqual(['no-dart']);
    const two = pivoted(front(40), { share: 0.5 });
    expect(codesOf(pivotDart(two, { to: { edge: 'shoulder', at: 90 }, share: 1 }))).toEqual(['which-dart']);
  });
});
