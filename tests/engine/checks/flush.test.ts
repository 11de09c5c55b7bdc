import { describe, expect, it } from 'vitest';
import { flushFaults } from '../../../engine/checks/flush.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import type { Edge } from '../../../engine/geometry/curve.ts';
import { point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import type { Seam } from '../../../engine/pattern/seam.ts';
import { garment, line, polygon } from '../garments.ts';

type Rest = Partial<PieceEdge>;

/** Two panels of 100 by 200 mm side by side; the seam runs down between them, each edge with an allowance of 10 mm. */
function panel(
  name: 'left' | 'right',
  rest: { readonly top?: Rest; readonly foot?: Rest; readonly seam?: Rest } = {},
): Piece {
  const x = name === 'left' ? 0 : 100;
  const seam: Rest = { rank: 1, ...rest.seam };
  return polygon(
    name,
    [
      [x, 0],
      [x + 100, 0],
      [x + 100, 200],
      [x, 200],
    ],
    [
      ['top', { rank: 2, ...rest.top }],
      name === 'left' ? ['seam', seam] : ['side', { rank: 1 }],
      ['foot', { rank: 3, ...rest.foot }],
      name === 'right' ? ['seam', seam] : ['side', { rank: 1 }],
    ],
  );
}

/** A cutting line that lies so far above, below and beside a panel, mm. */
function cut(name: 'left' | 'right', { above = 10, below = 10, beside = 10 }): readonly [string, Edge] {
  const x = name === 'left' ? 0 : 100;
  const corners = [
    point(x - beside, -above),
    point(x + 100 + beside, -above),
    point(x + 100 + beside, 200 + below),
    point(x - beside, 200 + below),
  ];
  return [name, { name: 'cut', curves: corners.map((from, i) => line(from, corners[(i + 1) % 4] ?? from)) }];
}

const sewn: Seam = {
  name: 'panel seam',
  a: [{ piece: 'left', edge: 'seam' }],
  b: [{ piece: 'right', edge: 'seam', reversed: true }],
  ease: 0,
  gatherRatio: 1,
};

function faults(pieces: readonly Piece[], cuts: readonly (readonly [string, Edge])[], seam: Seam = sewn) {
  const made = garment(pieces, { seams: [seam] });
  return flushFaults(made, new Map(cuts), tapeFor(made), 0.05);
}

const both = [panel('left'), panel('right')];

describe('the allowances at the ends of a seam', () => {
  it('are flush where both reach equally far', () => {
    expect(faults(both, [cut('left', {}), cut('right', {})])).toEqual([]);
  });

  it.each([
    ['start', { above: 10.3 }],
    ['end', { below: 10.3 }],
  ])('are told of at the %s of the seam, by how much, and on which piece they are longer', (which, more) => {
    for (const longer of ['left', 'right'] as const) {
      const other = longer === 'left' ? 'right' : 'left';
      const [fault, ...rest] = faults(both, [cut(longer, more), cut(other, {})]);
      expect(rest).toEqual([]);
      expect(fault?.value).toBeCloseTo(0.3, 9);
      expect(fault).toMatchObject({
        code: 'allowances-not-flush',
        path: 'panel seam',
        limits: { max: 0.05 },
      });
      expect(fault?.message).toBe(
        `At the ${which} of the seam "panel seam" the allowances do not end flush: that of ${longer} reaches 0.3 mm farther than that of ${other}.`,
      );
    }
  });

  it('may differ by half a millimetre in a hem, on whichever piece that is, and by no more', () => {
    const hem: Rest = { turn: 'hem' };
    for (const pieces of [
      [panel('left', { foot: hem }), panel('right', { foot: hem })],
      [panel('left', { foot: hem }), panel('right')],
      [panel('left'), panel('right', { foot: hem })],
    ]) {
      expect(faults(pieces, [cut('left', { below: 10.3 }), cut('right', {})])).toEqual([]);
      expect(faults(pieces, [cut('left', { below: 10.6 }), cut('right', {})])).toHaveLength(1);
      expect(faults(pieces, [cut('left', { above: 10.3 }), cut('right', {})])).toHaveLength(1);
    }
  });

  it('are compared as far out as the narrower of the two goes', () => {
    const narrow = panel('right', { seam: { allowance: 6 } });
    expect(faults([panel('left'), narrow], [cut('left', {}), cut('right', { beside: 6 })])).toEqual([]);
  });

  it('reach nowhere beyond it on either side where the edge across has none', () => {
    const top: Rest = { allowance: 0 };
    const bare = [panel('left', { top }), panel('right', { top })];
    expect(faults(bare, [cut('left', { above: 0 }), cut('right', { above: 0 })])).toEqual([]);
    expect(faults(bare, [cut('left', { above: 1e-9 }), cut('right', { above: -1e-9 })])).toEqual([]);
    expect(faults(bare, [cut('left', { above: 0.3 }), cut('right', { above: 0 })])).toHaveLength(1);
  });

  it('are compared as the piece turns up at the beginning of its outline too, and where a hem is above its seam', () => {
    // The gore flares by a fifth: turned up, its hem narrows there as the gore does above it.
    const flare = 40;
    const gore = (name: 'left' | 'right', first: number): Piece => {
      const x = name === 'left' ? 0 : 100;
      const seamTop = 100;
      const corners: [number, number][] = [
        [x, 0],
        [x + 100, 0],
        [x + 100, 200],
        [x, 200],
      ];
      for (const corner of corners)
        if (corner[0] === seamTop && corner[1] === 0) corner[0] += name === 'left' ? flare : -flare;
      const edges: [string, Rest][] = [
        ['top', { rank: 2, turn: 'hem', allowance: 30 }],
        name === 'left' ? ['seam', { rank: 1 }] : ['side', { rank: 1 }],
        ['foot', { rank: 3 }],
        name === 'right' ? ['seam', { rank: 1 }] : ['side', { rank: 1 }],
      ];
      const turned = <T>(list: readonly T[]): T[] => [...list.slice(first), ...list.slice(0, first)];
      return polygon(name, turned(corners), turned(edges));
    };
    for (const first of [0, 1, 2, 3]) {
      const pieces = [gore('left', first), gore('right', first)];
      const cuts = pieces.map((piece): readonly [string, Edge] => [piece.name, cuttingLine(piece, PARALLEL)]);
      expect(faults(pieces, cuts), `from corner ${first}`).toEqual([]);
    }
  });

  it('have nothing to match on a fold, where another seam runs through, where nothing is cut, and where the seam is felled', () => {
    const uneven = [cut('left', { above: 10.3 }), cut('right', {})];
    for (const top of [{ turn: 'fold', allowance: 0 }, { rank: 0 }, { rank: 1 }] as const) {
      expect(faults([panel('left', { top }), panel('right')], uneven)).toEqual([]);
      expect(faults([panel('left'), panel('right', { top })], uneven)).toEqual([]);
    }
    const bare = panel('left', { seam: { allowance: 0 } });
    expect(faults([bare, panel('right')], uneven)).toEqual([]);
    expect(faults(both, uneven, { ...sewn, felled: true })).toEqual([]);
    expect(faults(both, uneven.slice(1))).toEqual([]);
  });

  it('are left to others where a seam names what is not there', () => {
    const uneven = [cut('left', { above: 10.3 }), cut('right', {})];
    expect(faults(both, uneven, { ...sewn, a: [{ piece: 'left', edge: 'no such edge' }] })).toEqual([]);
    expect(faults(both, uneven, { ...sewn, a: [{ piece: 'no such piece', edge: 'seam' }] })).toEqual([]);
    expect(faults(both, uneven, { ...sewn, a: [] })).toEqual([]);
  });
});
