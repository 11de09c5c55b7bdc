import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isClosed } from '../../../engine/checks/outlines.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { mirror } from '../../../engine/shaping/mirror.ts';
import { moveNotch } from '../../../engine/shaping/move-notch.ts';
import { anyPanel, codesOf, edgeNamed, made, rectangle } from './pieces.ts';

describe('mirroring a half', () => {
  test('edges square to the centre run on across it, the others are there twice', () => {
    const half = rectangle(200, 300, [
      { name: 'a', edge: 'top', at: 50, mark: 'single' },
      { name: 'b', edge: 'side', at: 100, mark: 'double' },
    ]);
    const whole = made(mirror(half, 'front'));
    expect(whole.edges.map(({ name }) => name).sort()).toEqual(['hem', 'other side', 'side', 'top']);
    expect(edgeLength(edgeNamed(whole, 'top'))).toBeCloseTo(400, 9);
    const at = new Map(whole.notches.map((notch) => [notch.name, notch]));
    expect(at.get('a')).toMatchObject({ edge: 'top', at: 250 });
    expect(at.get('other a')).toMatchObject({ edge: 'top', at: 150 });
    expect(at.get('other b')).toMatchObject({ edge: 'other side', at: 200, mark: 'double' });
  });

  test('any panel: twice the area, closed and clockwise', () => {
    fc.assert(
      fc.property(anyPanel, (piece) => {
        const whole = made(mirror(piece, 'front'));
        expect(signedArea(whole.edges)).toBeCloseTo(2 * signedArea(piece.edges), 4);
        expect(isClosed(whole.edges)).toBe(true);
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  test('only a straight edge can be mirrored in', () => {
    fc.assert(
      fc.property(anyPanel, (piece) => {
        const codes = codesOf(mirror(piece, 'hem'));
        expect(codes.length === 0 || codes[0] === 'mirror-not-straight').toBe(true);
      }),
      { numRuns: 20, endOnFailure: true },
    );
    expect(codesOf(mirror(rectangle(2, 3), 'neck'))).toEqual(['no-such-edge']);
  });
});

describe('moving a notch', () => {
  const piece = rectangle(200, 300, [{ name: 'bust', edge: 'side', at: 50, mark: 'single' }]);

  test('sets it elsewhere and changes nothing else', () => {
    const moved = made(moveNotch(piece, 'bust', { edge: 'top', at: 20 }));
    expect(moved).toEqual({ ...piece, notches: [{ name: 'bust', edge: 'top', at: 20, mark: 'single' }] });
  });

  test.each([
    ['no-such-notch', 'waist', { edge: 'top', at: 20 }],
    ['no-such-edge', 'bust', { edge: 'neck', at: 20 }],
    ['notch-off-edge', 'bust', { edge: 'top', at: 201 }],
    ['notch-off-edge', 'bust', { edge: 'top', at: -1 }],
  ])('is refused: %s', (code, name, to) => {
    expect(codesOf(moveNotch(piece, name, to))).toEqual([code]);
  });
});
