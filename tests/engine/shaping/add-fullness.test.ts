import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { addFullness, type Fullness } from '../../../engine/shaping/add-fullness.ts';
import { line } from '../geometry/generators.ts';
import { anyPanel, codesOf, edge, edgeNamed, made, panelOf, pieceOf, rectangle } from './pieces.ts';

const asked: Fullness = { from: 'hem', to: 'top', lines: 5, edge: 'hem', length: 500 };

describe('adding gathering fullness', () => {
  // Flat = finished x ratio: gathered 2.5 to 1, 20 in of seam take 50 in (workroom arithmetic).
  test('20 in of seam at 2.5 to 1 take 50 in', () => {
    const full = made(addFullness(rectangle(508, 300), { ...asked, length: 2.5 * 508 }));
    expect(edgeLength(edgeNamed(full.piece, 'hem'))).toBeCloseTo(1270, 2);
    expect(full.amount).toBeCloseTo(762, 6);
  });

  test.each([undefined, 'top'])('any hem comes out at the length asked for, hinge %s', (hinge) => {
    fc.assert(
      fc.property(anyPanel, fc.double({ min: 1.1, max: 1.8, noNaN: true }), (piece, ratio) => {
        const length = ratio * edgeLength(edgeNamed(piece, 'hem'));
        const full = made(addFullness(piece, { ...asked, length, ...(hinge ? { hinge } : {}) }));
        expect(Math.abs(edgeLength(edgeNamed(full.piece, 'hem')) - length)).toBeLessThan(0.05);
      }),
      { numRuns: 15, endOnFailure: true },
    );
  });

  // A fan past a right angle, and two hollow hems that turn round as they open.
  test.each([
    [400, 120, 60, 0, 1.506],
    [400, 121.7, 0, -25, 1.8],
    [313.26, 120, 0, -25, 1.171],
    [185.7, 120, 0, -25, 1.2722],
  ])('a hard case, hinged: %d by %d mm, flare %d, sag %d, %d to 1', (width, height, flare, sag, ratio) => {
    const panel = panelOf({ width, height, flare, sag, drop: 0, bow: 0 });
    const length = ratio * edgeLength(edgeNamed(panel, 'hem'));
    const full = made(addFullness(panel, { ...asked, length, hinge: 'top' }));
    expect(Math.abs(edgeLength(edgeNamed(full.piece, 'hem')) - length)).toBeLessThan(0.05);
  });

  test('is refused where the edge runs along the slash lines: opened, it is hardly longer', () => {
    // A bias strip that leans by 600 mm; its hem stands upright, as nearly do the lines to its other end.
    const strip = pieceOf([
      edge('top', line(0, 0, 0, -300)),
      edge('side', line(0, -300, 40, 300)),
      edge('hem', line(40, 300, 40, 600)),
      edge('front', line(40, 600, 0, 0)),
    ]);
    const wanted = addFullness(strip, { ...asked, lines: 3, length: 301 });
    expect(codesOf(wanted)).toEqual(['fullness-impossible']);
    expect(wanted.issues[0]?.message).toBe('“hem” cannot be opened to 301.0 mm.');
  });

  test.each<[string, Partial<Fullness>]>([
    ['edge-not-slashed', { edge: 'side' }],
    ['edge-not-slashed', { hinge: 'hem' }],
    ['no-fullness', { length: 200 }],
    ['no-such-edge', { to: 'cuff' }],
  ])('is refused: %s', (code, how) => {
    expect(codesOf(addFullness(rectangle(300, 300), { ...asked, ...how }))).toEqual([code]);
  });
});
