import { describe, expect, it } from 'vitest';
import { markFaults } from '../../../engine/checks/marks.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { InsideLine, Notch, Piece } from '../../../engine/pattern/piece.ts';
import type { Seam } from '../../../engine/pattern/seam.ts';
import { garment, line, notch, polygon } from '../garments.ts';

const panel = (name: string, notches: readonly Notch[], rest: Partial<Piece> = {}): Piece => ({
  ...polygon(
    name,
    [
      [0, 0],
      [100, 0],
      [100, 200],
      [0, 200],
    ],
    [
      ['top', {}],
      ['right', {}],
      ['bottom', {}],
      ['left', {}],
    ],
  ),
  notches,
  ...rest,
});

const joined = (a: string, b: string): Seam => ({
  name: `${a} to ${b}`,
  a: [{ piece: a, edge: 'right' }],
  b: [{ piece: b, edge: 'left', reversed: true }],
  ease: 0,
  gatherRatio: 1,
});

const codes = (pieces: readonly Piece[], seams: readonly Seam[] = []) => {
  const sewn = garment(pieces, { seams });
  return markFaults(sewn, tapeFor(sewn)).map((issue) => issue.code);
};

describe('looking over the notches', () => {
  const [front, side] = [
    panel('centre front', [notch('bust', 'right', 50)]),
    panel('side front', [notch('bust', 'left', 150)]),
  ];
  const seam = joined('centre front', 'side front');

  it('says nothing of partners, nor of a notch on an edge that is not sewn', () => {
    expect(codes([front, side], [seam])).toEqual([]);
    expect(codes([front])).toEqual([]);
  });

  it('finds a notch whose partner is missing, on either side', () => {
    expect(codes([front, panel('side front', [])], [seam])).toEqual(['notch-without-partner']);
    expect(codes([panel('centre front', []), side], [seam])).toEqual(['notch-without-partner']);
    expect(codes([front, panel('side front', [notch('hip', 'left', 150)])], [seam])).toHaveLength(2);
  });

  it('lets a notch that marks a fold stand alone', () => {
    expect(
      codes([panel('centre front', [notch('fold', 'right', 0, 'fold')]), panel('side front', [])], [seam]),
    ).toEqual([]);
  });

  it('finds two notches of one name on one side of a seam', () => {
    const twice = panel('centre front', [notch('bust', 'right', 50), notch('bust', 'right', 80)]);
    expect(codes([twice, side], [seam])).toEqual(['notch-twice']);
  });

  it('finds a double notch whose partner is single', () => {
    const double = panel('side front', [notch('bust', 'left', 150, 'double')]);
    expect(codes([front, double], [seam])).toEqual(['notch-partners-differ']);
  });

  it('wants single notches where only fronts meet, double where only backs meet, either between the two', () => {
    const both = (a: string, b: string, mark: Notch['mark']) =>
      codes(
        [panel(a, [notch('balance', 'right', 50, mark)]), panel(b, [notch('balance', 'left', 150, mark)])],
        [joined(a, b)],
      );
    expect(both('centre front', 'side front', 'double')).toEqual(['notch-double-at-front']);
    expect(both('centre back', 'side back', 'single')).toEqual(['notch-single-at-back']);
    expect(both('centre back', 'side back', 'double')).toEqual([]);
    expect(both('centre back', 'side back', 'level')).toEqual([]);
    expect(both('side front', 'side back', 'single')).toEqual([]);
    expect(both('side front', 'side back', 'double')).toEqual([]);
    expect(both('centre front', 'sleeve', 'double')).toEqual(['notch-double-at-front']);
    expect(both('side back', 'sleeve', 'single')).toEqual(['notch-single-at-back']);
  });

  it('finds a notch beyond the end of its edge', () => {
    expect(codes([panel('front', [notch('bust', 'right', 200)])])).toEqual([]);
    expect(codes([panel('front', [notch('bust', 'right', 200.1)])])).toEqual(['notch-off-edge']);
    expect(codes([panel('front', [notch('bust', 'right', -0.1)])])).toEqual(['notch-off-edge']);
  });

  it('wants a notch at one end of every fold, be it an edge or a line inside', () => {
    const folded = (notches: readonly Notch[]) => {
      const made = panel('front', notches);
      const edges = made.edges.map((edge) =>
        edge.name === 'left' ? { ...edge, turn: 'fold' as const, allowance: 0 } : edge,
      );
      return codes([{ ...made, edges }]);
    };
    expect(folded([])).toEqual(['fold-without-notch']);
    expect(folded([notch('fold', 'top', 0, 'fold')])).toEqual([]);
    expect(folded([notch('fold', 'bottom', 100, 'fold')])).toEqual([]);
    expect(folded([notch('fold', 'top', 1, 'fold')])).toEqual(['fold-without-notch']);
    expect(folded([notch('fold', 'top', 0, 'single')])).toEqual(['fold-without-notch']);

    const fold: InsideLine = { name: 'neckline', kind: 'fold', curves: [line(point(0, 80), point(100, 80))] };
    expect(codes([panel('insert', [], { lines: [fold] })])).toEqual(['fold-without-notch']);
    expect(codes([panel('insert', [notch('fold', 'right', 80, 'fold')], { lines: [fold] })])).toEqual([]);
  });
});
