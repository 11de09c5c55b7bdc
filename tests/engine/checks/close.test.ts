import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../../engine/checks/bounds.ts';
import { closeGirths, levelWidth } from '../../../engine/checks/close.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import type { InsideLine, Piece } from '../../../engine/pattern/piece.ts';
import type { Girth } from '../../../engine/pattern/seam.ts';
import { uniform } from '../../uniform.ts';
import { cubic, edge, garment, line, piece, polygon } from '../garments.ts';

const level = (from: Point, to: Point, rest: Partial<InsideLine> = {}): InsideLine => ({
  name: 'bust level',
  kind: 'level',
  curves: [line(from, to)],
  ...rest,
});

const sides = [
  ['top', {}],
  ['right', {}],
  ['bottom', {}],
  ['left', {}],
] as const;

/** 200 mm wide at the top, 300 mm at the bottom, 400 mm long. */
const trapezoid = (lines: readonly InsideLine[]): Piece => ({
  ...polygon(
    'front',
    [
      [0, 0],
      [200, 0],
      [300, 400],
      [0, 400],
    ],
    sides,
  ),
  lines,
});

const bust: Girth = {
  level: 'bust',
  body: 900,
  ease: 100,
  parts: [{ kind: 'line', piece: 'front', line: 'bust level', times: 4 }],
};

function close(pieces: readonly Piece[], girths: readonly Girth[]) {
  const sewn = garment(pieces, { girths });
  return closeGirths(sewn, tapeFor(sewn), draftBounds.girth);
}

describe('closing a girth', () => {
  it('measures a level line again from one stitching line to the other', () => {
    // Half way down the trapezoid is 250 mm wide, although the drawn line stops short on both sides.
    const { girths, issues } = close([trapezoid([level(point(20, 200), point(180, 200))])], [bust]);
    expect(girths).toEqual([{ level: 'bust', body: 900, ease: 100, target: 1000, finished: 1000, error: 0 }]);
    expect(issues).toEqual([]);
  });

  it('speaks beyond half a millimetre, and says how much and which way', () => {
    const front = trapezoid([level(point(0, 200.6), point(250, 200.6))]);
    // 0.6 mm lower is 0.15 mm wider, four times.
    expect(close([front], [bust]).girths[0]?.error).toBeCloseTo(0.6, 9);
    const { issues } = close([front], [bust]);
    expect(issues[0]).toMatchObject({ code: 'girth-does-not-close', path: 'bust', severity: 'error' });
    expect(issues[0]?.message).toContain('0.6 mm too wide');
    expect(close([trapezoid([level(point(0, 199.6), point(250, 199.6))])], [bust]).issues).toEqual([]);
  });

  it('takes off the fullness gathered away at the level', () => {
    const front = trapezoid([level(point(0, 200), point(250, 200), { fullness: 30 })]);
    expect(close([front], [bust]).girths[0]?.finished).toBeCloseTo(880, 9);
  });

  it('measures an edge by its length', () => {
    const waist: Girth = {
      level: 'waist',
      body: 550,
      ease: 50,
      parts: [{ kind: 'edge', piece: 'front', edge: 'bottom', times: 2 }],
    };
    expect(close([trapezoid([])], [waist]).girths[0]).toMatchObject({ finished: 600, error: 0 });
  });

  it('measures between the two sides that the drawn line lies between, not across a gap', () => {
    const forked = polygon(
      'front',
      [
        [0, 0],
        [100, 0],
        [100, 200],
        [150, 200],
        [150, 0],
        [300, 0],
        [300, 400],
        [0, 400],
      ],
      ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((name) => [name, {}] as const),
    );
    expect(levelWidth(forked, level(point(10, 100), point(90, 100)))).toBeCloseTo(100, 9);
    expect(levelWidth(forked, level(point(160, 100), point(290, 100)))).toBeCloseTo(150, 9);
  });

  it('finds the width through corners, where two edges meet on the level', () => {
    const hexagon = polygon(
      'front',
      [
        [0, 0],
        [200, 0],
        [250, 0.1 + 0.2],
        [200, 400],
        [0, 400],
        [-50, 0.3],
      ],
      ['a', 'b', 'c', 'd', 'e', 'f'].map((name) => [name, {}] as const),
    );
    expect(levelWidth(hexagon, level(point(-10, 0.3), point(200, 0.3)))).toBeCloseTo(300, 9);
  });

  it('finds the width of a half disc at any height and slope to the accuracy of its curves', () => {
    // Two cubic quarters keep within 2.7253e-4 of a circle of radius 1 (k = 0.5522847498).
    const k = 0.5522847498;
    const disc = piece('front', [
      edge('left', [
        cubic(point(-1, 0), point(-1, -k), point(-k, -1), point(0, -1)),
        cubic(point(0, -1), point(k, -1), point(1, -k), point(1, 0)),
      ]),
      edge('right', [
        cubic(point(1, 0), point(1, k), point(k, 1), point(0, 1)),
        cubic(point(0, 1), point(-k, 1), point(-1, k), point(-1, 0)),
      ]),
    ]);
    fc.assert(
      fc.property(uniform(-0.9, 0.9), uniform(0, Math.PI), (height, slope) => {
        const [c, s] = [Math.cos(slope), Math.sin(slope)];
        const at = (x: number) => point(x * c - height * s, x * s + height * c);
        const chord = 2 * Math.sqrt(1 - height * height);
        expect(Math.abs(levelWidth(disc, level(at(-0.05), at(0.1))) - chord)).toBeLessThan(2e-3);
      }),
    );
  });

  it('gives 0 for a level line outside its piece, which no girth can then close with', () => {
    expect(levelWidth(trapezoid([]), level(point(0, 500), point(100, 500)))).toBe(0);
  });
});
