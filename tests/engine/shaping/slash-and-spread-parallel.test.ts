import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isClosed } from '../../../engine/checks/outlines.ts';
import {
  edgeLength,
  edgeStart,
  endDirection,
  pointAlong,
  startDirection,
} from '../../../engine/geometry/edge.ts';
import { inflectionCount, joints } from '../../../engine/geometry/inflections.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { point } from '../../../engine/geometry/point.ts';
import { dot } from '../../../engine/geometry/vector.ts';
import { widthAt } from '../../../engine/shaping/own-piece.ts';
import { levelLine } from '../../../engine/shaping/reassemble.ts';
import { anyPanel, edgeNamed, rectangle } from './pieces.ts';
import { anyParallel, lengthOf, spread, spreadWhereInside } from './spreads.ts';

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
        const wide = spreadWhereInside(piece, how);
        if (!wide) return;
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
        const wide = spreadWhereInside(piece, how);
        if (!wide) return;
        const [before, after] = [edgeNamed(piece, 'hem'), edgeNamed(wide, 'hem')];
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
        const wide = spreadWhereInside(piece, how);
        if (!wide) return;
        const lines = how.lines;
        const heights = Array.from({ length: lines }, (_, i) => {
          const share = (i + 1) / (lines + 1);
          const hem = edgeNamed(piece, 'hem');
          return pointAlong(hem, edgeLength(hem) * (1 - share)).point.y;
        });
        const mean = heights.reduce((sum, height) => sum + height, 0) / lines;
        const grown = signedArea(wide.edges) - signedArea(piece.edges);
        const blend = 4 * lengthOf(wide, 'hem');
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

  test('hinged, the grainline stays along a fold though the strip it lay in turns', () => {
    const piece = { ...rectangle(200, 300), grain: { from: point(150, 50), to: point(150, 250) } };
    const edges = piece.edges.map((e) => (e.name === 'front' ? { ...e, turn: 'fold' as const } : e));
    const { grain } = spread({ ...piece, edges }, { from: 'hem', to: 'top', hinge: 'top', amount: 100 });
    expect(grain.to.x - grain.from.x).toBeCloseTo(0, 9);
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
