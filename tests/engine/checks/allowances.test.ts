import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allowanceFaults } from '../../../engine/checks/allowances.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { cubic, edge, line, piece, polygon } from '../garments.ts';

const names = ['top', 'right', 'bottom', 'left'];

/** A panel of 120 by 200 mm, leaning a little, every edge with an allowance and a rank of its own. */
const panel = (allowances: readonly number[], rest: (i: number) => Partial<PieceEdge> = () => ({})): Piece =>
  polygon(
    'panel',
    [
      [0, 0],
      [120, 10],
      [130, 200],
      [-10, 190],
    ],
    names.map((name, i) => [name, { allowance: allowances[i] ?? 10, rank: i + 1, ...rest(i) }]),
  );

const found = (drawn: Piece, cut: Edge) =>
  allowanceFaults(drawn, cut, 0.05).map(({ path, value }) => [path, value]);
const made = (drawn: Piece): Edge => cuttingLine(drawn, PARALLEL);

const anyAllowances = fc.array(fc.integer({ min: 5, max: 30 }), { minLength: 4, maxLength: 4 });

describe('the allowances of a cutting line', () => {
  it('are kept by the one that was made for them, whichever they are', () => {
    fc.assert(
      fc.property(anyAllowances, fc.shuffledSubarray([1, 2, 3, 4], { minLength: 4 }), (allowances, ranks) => {
        const drawn = panel(allowances, (i) => ({ rank: ranks[i] ?? 1 }));
        expect(found(drawn, made(drawn))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('are not where one edge has another, and that edge is told with the width it has', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 30 }),
        fc.nat(3),
        fc.constantFrom(-2, -0.1, 0.1, 2),
        (width, at, by) => {
          const allowances = names.map(() => width);
          const otherwise = allowances.map((own, i) => (i === at ? own + by : own));
          const faults = new Map(
            allowanceFaults(panel(allowances), made(panel(otherwise)), 0.05).map((issue) => [
              issue.path,
              issue,
            ]),
          );
          const fault = faults.get(`panel/${names[at]}`);
          expect(fault?.limits).toEqual({ min: width - 0.05, max: width + 0.05, unit: 'mm' });
          expect(fault?.value).toBeCloseTo(width + by, 1);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('may be wider where an end runs out into them from the seam beside it, and nowhere else', () => {
    const square = polygon(
      'square',
      [
        [0, 0],
        [200, 0],
        [200, 200],
        [0, 200],
      ],
      names.map((name, i) => [name, { allowance: 10, rank: i === 1 ? 1 : 2 }]),
    );
    // The seam on the right runs through: at the top its allowance ends `end` mm beyond it, and runs out to `meets`.
    const ranOut = (end: number, meets: number, away: number): Edge => {
      const stops = [
        point(-10, -10),
        point(meets, -away),
        point(200, -end),
        point(210, -end),
        point(210, 210),
        point(-10, 210),
        point(-10, -10),
      ];
      const curves = stops.slice(1).map((to, i) => line(stops[i] ?? to, to));
      return { name: 'cutting line', curves };
    };
    expect(found(square, ranOut(10, 190, 10))).toEqual([]);
    expect(found(square, ranOut(12, 184, 10))).toEqual([]);
    // Where it ends it is still too wide; it is too long.
    expect(found(square, ranOut(12, 184, 10.5))).not.toEqual([]);
    expect(found(square, ranOut(12, 150, 10))).not.toEqual([]);
  });

  it('are asked of every edge but the legs of a dart, which lie within', () => {
    const drawn = panel([10, 10, 10, 10]);
    const bare = made(panel([0, 0, 0, 0]));
    expect(found(drawn, bare).map(([path]) => path)).toEqual(names.map((name) => `panel/${name}`));
    const legs = panel([10, 10, 10, 10], (i) => (i === 1 ? { turn: 'dart' } : {}));
    expect(found(legs, bare).map(([path]) => path)).not.toContain('panel/right');
  });

  it('are none on a fold', () => {
    const folded = panel([10, 10, 10, 0], (i) => (i === 3 ? { turn: 'fold' } : {}));
    expect(found(folded, made(folded))).toEqual([]);
    const beyond = made(panel([10, 10, 10, 6]));
    expect(found(folded, beyond).map(([path]) => path)).toContain('panel/left');
  });

  it('are measured along curves: at the worst place of a hollow or a round', () => {
    for (const bow of [-30, 30]) {
      const curved = (allowance: number) =>
        piece('yoke', [
          edge('neck', [cubic(point(0, 0), point(40, bow), point(80, bow), point(120, 0))], {
            allowance,
            rank: 3,
          }),
          edge('right', [line(point(120, 0), point(120, 150))], { rank: 1 }),
          edge('foot', [line(point(120, 150), point(0, 150))], { rank: 4 }),
          edge('left', [line(point(0, 150), point(0, 0))], { rank: 2 }),
        ]);
      expect(found(curved(8), made(curved(8)))).toEqual([]);
      for (const by of [-0.1, 0.1]) {
        const faults = found(curved(8), made(curved(8 + by)));
        expect(faults.map(([path]) => path)).toContain('yoke/neck');
        const neck = faults.find(([path]) => path === 'yoke/neck');
        expect(neck?.[1]).toBeCloseTo(8 + by, 1);
      }
    }
  });

  it('are not kept by a line that is notched at a corner, or anywhere else', () => {
    const drawn = panel([10, 10, 10, 10]);
    const cut = made(drawn);
    const dented = (x: number, y: number): Edge => ({
      ...cut,
      curves: cut.curves.flatMap((curve, i) =>
        i === 0 ? [line(curve.from, point(x, y)), line(point(x, y), curve.to)] : [curve],
      ),
    });
    const [first] = cut.curves;
    if (!first) throw new Error('no cutting line');
    const middle = point((first.from.x + first.to.x) / 2, (first.from.y + first.to.y) / 2);
    expect(found(drawn, dented(middle.x, middle.y))).toEqual([]);
    expect(found(drawn, dented(middle.x, middle.y + 0.2))).toHaveLength(1);
    expect(found(drawn, dented(middle.x, middle.y - 0.2))).toHaveLength(1);
  });
});
