import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isClosed } from '../../../engine/checks/outlines.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  pointAlong,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { inflectionCount, joints } from '../../../engine/geometry/inflections.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { dot } from '../../../engine/geometry/vector.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { widthAt } from '../../../engine/shaping/own-piece.ts';
import { levelLine } from '../../../engine/shaping/reassemble.ts';
import { type Spread, slashAndSpread } from '../../../engine/shaping/slash-and-spread.ts';
import { anyPanel, codesOf, edgeNamed, made, rectangle } from './pieces.ts';

const spread = (piece: Piece, how: Partial<Spread>): Piece =>
  made(slashAndSpread(piece, { from: 'top', to: 'hem', lines: 4, amount: 40, ...how })).piece;

const lengthOf = (piece: Piece, name: string): number => edgeLength(edgeNamed(piece, name));

const anyParallel = fc.record({
  lines: fc.integer({ min: 1, max: 12 }),
  amount: fc.double({ min: 1, max: 200, noNaN: true }),
});

describe('slash and spread in parallel', () => {
  test('a rectangle becomes wider by exactly the amount and no longer', () => {
    const wide = spread(rectangle(200, 300), { lines: 6, amount: 60 });
    expect(lengthOf(wide, 'top')).toBeCloseTo(260, 9);
    expect(lengthOf(wide, 'hem')).toBeCloseTo(260, 9);
    expect(lengthOf(wide, 'side')).toBe(300);
    expect(signedArea(wide.edges)).toBeCloseTo(260 * 300, 6);
  });

  test('slash lines that lie open it upwards: longer by the amount and no wider', () => {
    const long = spread(rectangle(200, 300), { from: 'front', to: 'side', lines: 3, amount: 45 });
    expect(lengthOf(long, 'side')).toBeCloseTo(345, 9);
    expect(lengthOf(long, 'front')).toBeCloseTo(345, 9);
    expect(lengthOf(long, 'top')).toBe(200);
  });

  test('any panel: the straight top grows by the amount, the sides keep shape and length, every width between them grows by it', () => {
    fc.assert(
      fc.property(anyPanel, anyParallel, (piece, how) => {
        const wide = spread(piece, how);
        expect(lengthOf(wide, 'top')).toBeCloseTo(lengthOf(piece, 'top') + how.amount, 6);
        for (const name of ['side', 'front'])
          expect(lengthOf(wide, name)).toBeCloseTo(lengthOf(piece, name), 6);
        for (const y of [20, 50, 80]) expect(widthAt(wide, y)).toBeCloseTo(widthAt(piece, y) + how.amount, 6);
        expect(isClosed(wide.edges)).toBe(true);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('any panel: the blended hem runs smoothly, leaves its corners as they were and has no new inflection', () => {
    fc.assert(
      fc.property(anyPanel, anyParallel, (piece, how) => {
        const [before, after] = [edgeNamed(piece, 'hem'), edgeNamed(spread(piece, how), 'hem')];
        for (const { angle } of joints(after)) expect(Math.abs(angle)).toBeLessThan(1e-6);
        expect(dot(startDirection(before), startDirection(after))).toBeCloseTo(1, 9);
        expect(dot(endDirection(before), endDirection(after))).toBeCloseTo(1, 9);
        expect(inflectionCount(after)).toBeLessThanOrEqual(before.inflections);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('any panel: area grows by the amount times the height of the slash lines, blending apart', () => {
    fc.assert(
      fc.property(anyPanel, anyParallel, (piece, how) => {
        const lines = how.lines;
        const heights = Array.from({ length: lines }, (_, i) => {
          const share = (i + 1) / (lines + 1);
          const hem = edgeNamed(piece, 'hem');
          return pointAlong(hem, edgeLength(hem) * (1 - share)).point.y;
        });
        const mean = heights.reduce((sum, height) => sum + height, 0) / lines;
        const grown = signedArea(spread(piece, how).edges) - signedArea(piece.edges);
        const blend = 7 * lengthOf(spread(piece, how), 'hem');
        expect(Math.abs(grown - how.amount * mean)).toBeLessThan(blend);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('less than nothing takes fullness out again', () => {
    const back = spread(spread(rectangle(200, 300), { amount: 60 }), { amount: -60 });
    expect(lengthOf(back, 'top')).toBeCloseTo(200, 9);
  });

  test('a level guide line stays level, at its height, and grows by the amount', () => {
    const guided = {
      ...rectangle(200, 300),
      lines: levelLine({ name: 'guide', kind: 'level', curves: [] }, rectangle(200, 300).edges, 120),
    };
    const guide = spread(guided, { amount: 60 }).lines.find(({ kind }) => kind === 'level')?.curves[0];
    expect(guide?.from.y).toBe(120);
    expect(guide?.to.y).toBe(120);
    expect((guide?.to.x ?? 0) - (guide?.from.x ?? 0)).toBeCloseTo(260, 9);
  });

  test('the part with the grainline stays; one on a fold stays before that', () => {
    const piece = rectangle(200, 300);
    expect(edgeStart(edgeNamed(spread(piece, {}), 'top')).x).toBeCloseTo(0, 9);
    const folded = {
      ...piece,
      edges: piece.edges.map((e) => (e.name === 'side' ? { ...e, turn: 'fold' as const, allowance: 0 } : e)),
    };
    const wide = spread(folded, {});
    expect(edgeStart(edgeNamed(wide, 'side')).x).toBeCloseTo(200, 9);
    expect(edgeStart(edgeNamed(wide, 'top')).x).toBeCloseTo(-40, 9);
  });

  test('notches go with their strip; those on uncut edges keep their place', () => {
    const piece = rectangle(200, 300, [
      { name: 'a', edge: 'top', at: 20, mark: 'single' },
      { name: 'b', edge: 'top', at: 100, mark: 'single' },
      { name: 'c', edge: 'hem', at: 10, mark: 'single' },
      { name: 'd', edge: 'side', at: 150, mark: 'single' },
    ]);
    const at = spread(piece, { lines: 4, amount: 40 }).notches.map((notch) => notch.at);
    // Strips are 40 mm wide and part by 10: 100 mm lies in the third; the hem is walked backwards.
    [20, 120, 10, 150].map((wanted, i) => expect(at[i]).toBeCloseTo(wanted, 6));
  });

  test('the gaps are drawn as slash lines', () => {
    const drawn = spread(rectangle(200, 300), { lines: 5 }).lines.filter(({ kind }) => kind === 'slash');
    expect(drawn).toHaveLength(5);
  });
});

describe('slash and spread hinged on one edge', () => {
  test('the hinge edge keeps its length and the other grows by angle times distance, one slash line', () => {
    const piece = rectangle(200, 300);
    const open = spread(piece, { from: 'hem', to: 'top', hinge: 'top', lines: 1, amount: 60 });
    const angle = 2 * Math.asin(60 / 600);
    const [top, side] = [edgeNamed(open, 'top'), edgeNamed(open, 'side')];
    expect(edgeLength(top)).toBeCloseTo(200, 3);
    expect(edgeLength(side)).toBeCloseTo(300, 9);
    const turned = dot(endDirection(side), { x: Math.sin(angle), y: Math.cos(angle) });
    expect(Math.abs(turned)).toBeCloseTo(1, 9);
  });

  // Circle skirts, waist 700 mm, length 600 mm: r = W / (2 pi f), hem = W + 2 pi f L (common geometry).
  test.each([
    ['full', 1, 4469.911],
    ['half', 0.5, 2584.956],
    ['quarter', 0.25, 1642.478],
  ])(
    'a quarter of a %s circle skirt from a rectangle has its hem, its waist and its area',
    (_, fraction, hem) => {
      const [waist, length, lines] = [175, 600, 40];
      const turn = (Math.PI / 2) * fraction;
      const opening = 2 * length * Math.sin(turn / lines / 2);
      const piece = rectangle(waist, length);
      const open = spread(piece, { from: 'hem', to: 'top', hinge: 'top', lines, amount: opening * lines });
      expect(lengthOf(open, 'top')).toBeCloseTo(waist, 3);
      expect(Math.abs(lengthOf(open, 'hem') - hem / 4)).toBeLessThan(0.5);
      const radius = waist / turn;
      const area = (turn / 2) * ((radius + length) ** 2 - radius ** 2);
      expect(Math.abs(signedArea(open.edges) / area - 1)).toBeLessThan(0.002);
      const between = Math.acos(
        dot(endDirection(edgeNamed(open, 'side')), endDirection(edgeNamed(open, 'front'))),
      );
      expect(Math.PI - between).toBeCloseTo(turn, 9);
    },
  );

  test('any panel: sides keep their lengths, the hinge edge its own, and the edges run smoothly', () => {
    fc.assert(
      fc.property(
        anyPanel,
        fc.integer({ min: 1, max: 10 }),
        fc.double({ min: 5, max: 80, noNaN: true }),
        (piece, lines, amount) => {
          const opened = slashAndSpread(piece, { from: 'hem', to: 'top', hinge: 'top', lines, amount });
          const open = made(opened).piece;
          for (const name of ['side', 'front'])
            expect(lengthOf(open, name)).toBeCloseTo(lengthOf(piece, name), 6);
          const change = lengthOf(open, 'top') - lengthOf(piece, 'top');
          const told = opened.issues.find(({ code }) => code === 'hinge-edge-changed')?.value;
          if (Math.abs(change) > 0.05) expect(told).toBeCloseTo(change, 6);
          if (lines > 3) expect(told).toBe(undefined);
          expect(change).toBeLessThan(0.05);
          expect(lengthOf(open, 'hem')).toBeGreaterThan(lengthOf(piece, 'hem') + 0.8 * amount);
          for (const edge of open.edges)
            for (const { angle } of joints(edge)) expect(Math.abs(angle)).toBeLessThan(1e-6);
          expect(isClosed(open.edges)).toBe(true);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('what was opened can be closed again', () => {
    const open = spread(rectangle(200, 300), { from: 'hem', to: 'top', hinge: 'top', lines: 1, amount: 60 });
    const [a, b] = [edgeStart(edgeNamed(open, 'hem')), edgeEnd(edgeNamed(open, 'hem'))];
    expect(distance(a, b)).toBeGreaterThan(255);
  });
});

describe('a spread that makes no sense', () => {
  test.each<[string, Partial<Spread>]>([
    ['no-such-edge', { from: 'neck' }],
    ['no-such-edge', { to: 'cuff' }],
    ['slash-edges-same', { to: 'top' }],
    ['hinge-not-slashed', { hinge: 'side' }],
    ['too-many-slashes', { lines: 0 }],
    ['too-many-slashes', { lines: 2.5 }],
    ['too-many-slashes', { lines: 61 }],
    ['spread-impossible', { hinge: 'hem', lines: 1, amount: 700 }],
  ])('is refused: %s', (code, how) => {
    const spreads = slashAndSpread(rectangle(200, 300), {
      from: 'top',
      to: 'hem',
      lines: 4,
      amount: 40,
      ...how,
    });
    expect(codesOf(spreads)).toEqual([code]);
  });
});
