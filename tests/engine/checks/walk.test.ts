import { describe, expect, it } from 'vitest';
import { draftBounds } from '../../../engine/checks/bounds.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import { type Walk, walk } from '../../../engine/checks/walk.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import type { Seam } from '../../../engine/pattern/seam.ts';
import { cubic, edge, garment, line, notch, piece, polygon } from '../garments.ts';

const sides = [
  ['top', {}],
  ['right', {}],
  ['bottom', {}],
  ['left', {}],
] as const;

const rectangle = (name: string, width: number, height: number, rest: Partial<Piece> = {}): Piece => ({
  ...polygon(
    name,
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    sides,
  ),
  ...rest,
});

const side: Seam = {
  name: 'side',
  a: [{ piece: 'front', edge: 'right' }],
  b: [{ piece: 'back', edge: 'left', reversed: true }],
  ease: 0,
  gatherRatio: 1,
};

function walked(pieces: readonly Piece[], seams: readonly Seam[]) {
  const sewn = garment(pieces, { seams });
  return walk(sewn, tapeFor(sewn), draftBounds.seam);
}

const only = (walks: readonly Walk[]): Walk => {
  const [first] = walks;
  if (!first) throw new Error('nothing was walked');
  return first;
};

describe('walking a seam', () => {
  it('finds nothing to say about two rectangles of one height', () => {
    const { walks, issues } = walked([rectangle('front', 200, 400), rectangle('back', 220, 400)], [side]);
    expect(issues).toEqual([]);
    expect(only(walks).seam).toMatchObject({ name: 'side', lengthA: 400, lengthB: 400, mismatch: 0 });
  });

  it('finds a side moved by 0.2 mm, names both pieces, and says how much is too long', () => {
    const { walks, issues } = walked([rectangle('front', 200, 400.2), rectangle('back', 220, 400)], [side]);
    expect(only(walks).seam.mismatch).toBeCloseTo(0.2, 9);
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject({ code: 'seam-does-not-walk', path: 'side', severity: 'error' });
    expect(issues[0]?.message).toContain('front measures 400.2 mm');
    expect(issues[0]?.message).toContain('0.2 mm too long');
  });

  it('goes from notch to notch as they lie along the seam, in whatever order they were written', () => {
    const front = rectangle('front', 200, 400, {
      notches: [notch('two', 'right', 250), notch('one', 'right', 100)],
    });
    const back = rectangle('back', 220, 400, {
      notches: [notch('two', 'left', 150), notch('one', 'left', 300)],
    });
    const { walks, issues } = walked([front, back], [side]);
    expect(issues).toEqual([]);
    expect(only(walks).stretches.map(({ from, to, lengthA }) => [from, to, lengthA])).toEqual([
      ['start', 'one', 100],
      ['one', 'two', 150],
      ['two', 'end', 150],
    ]);
  });

  it('keeps silent up to 0.05 mm and speaks beyond', () => {
    const off = (mm: number) =>
      walked([rectangle('front', 200, 400 + mm), rectangle('back', 220, 400)], [side]).issues.length;
    expect(off(0.049)).toBe(0);
    expect(off(-0.049)).toBe(0);
    expect(off(0.051)).toBe(1);
    expect(off(-0.051)).toBe(1);
  });

  it('walks a slanted side of a trapezoid by its true length', () => {
    const trapezoid = polygon(
      'front',
      [
        [0, 0],
        [200, 0],
        [500, 400],
        [0, 400],
      ],
      sides,
    );
    // 3-4-5 triangle: the slanted side is 500 mm.
    const { walks, issues } = walked([trapezoid, rectangle('back', 100, 500)], [side]);
    expect(only(walks).seam.lengthA).toBeCloseTo(500, 9);
    expect(issues).toEqual([]);
  });

  it('walks a curve by its arc length', () => {
    // Speed of this cubic is 3 (1 - 2 t (1 - t)), so its length is exactly 2; here 100 times as large.
    const curved = piece('front', [
      edge('right', [cubic(point(0, 0), point(0, 100), point(100, 100), point(100, 0))]),
      edge('top', [line(point(100, 0), point(0, 0))]),
    ]);
    const { walks, issues } = walked([curved, rectangle('back', 100, 200)], [side]);
    expect(only(walks).seam.lengthA).toBeCloseTo(200, 5);
    expect(issues).toEqual([]);
  });

  it('counts ease as length that side a has more', () => {
    const pieces = [rectangle('front', 200, 406), rectangle('back', 220, 400)];
    expect(walked(pieces, [{ ...side, ease: 6 }]).issues).toEqual([]);
    expect(walked(pieces, [{ ...side, ease: 5.9 }]).issues).toHaveLength(1);
  });

  it('counts a gather ratio as a multiple of side b, and finds a wrong one', () => {
    const pieces = [rectangle('front', 200, 600), rectangle('back', 220, 400)];
    expect(walked(pieces, [{ ...side, gatherRatio: 1.5 }]).issues).toEqual([]);
    const { issues } = walked(pieces, [{ ...side, gatherRatio: 1.6 }]);
    expect(issues[0]?.message).toContain('gathered 1.6 to 1');
    expect(issues[0]?.message).toContain('40 mm too short');
  });

  it('says how long a side should be, its gathers and ease counted, and where it is worst', () => {
    const pieces = [rectangle('front', 200, 600), rectangle('back', 220, 400)];
    const { issues } = walked(pieces, [{ ...side, gatherRatio: 1.6, ease: 8 }]);
    expect(issues[0]?.message).toMatch(
      /front measures 600 mm, and to fit back \(400 mm, gathered 1.6 to 1, with 8 mm ease\) it should measure 648 mm. Worst over the whole seam, where it is 48 mm too short.$/,
    );
    expect(issues[0]?.value).toBeCloseTo(48, 9);
    const longer = walked(pieces, [{ ...side, gatherRatio: 1.4, ease: -8 }]).issues[0];
    expect(longer?.message).toContain('it should measure 552 mm');
    expect(longer?.message).toContain('48 mm too long');
  });

  it('walks a chain of edges end to end', () => {
    const chain: Seam = {
      ...side,
      a: [
        { piece: 'front', edge: 'top' },
        { piece: 'front', edge: 'right' },
      ],
    };
    const { walks } = walked([rectangle('front', 200, 400), rectangle('back', 220, 600)], [chain]);
    expect(only(walks).seam).toMatchObject({ lengthA: 600, lengthB: 600, mismatch: 0 });
  });

  it('compares stretches between partner notches, counted from the same end of the seam', () => {
    const front = rectangle('front', 200, 400, { notches: [notch('bust level', 'right', 100)] });
    // The back's side is walked from its end: 100 mm from the start of the seam is 300 mm along the edge.
    const back = (at: number) => rectangle('back', 220, 400, { notches: [notch('bust level', 'left', at)] });
    expect(walked([front, back(300)], [side]).issues).toEqual([]);

    const { walks, issues } = walked([front, back(299.8)], [side]);
    expect(only(walks).seam.mismatch).toBeCloseTo(0.2, 9);
    expect(only(walks).stretches.map((stretch) => stretch.to)).toEqual(['bust level', 'end']);
    expect(issues[0]?.message).toContain('notch "bust level"');
  });

  it('finds partner notches that stand in another order', () => {
    const front = rectangle('front', 200, 400, {
      notches: [notch('one', 'right', 100), notch('two', 'right', 200)],
    });
    const back = rectangle('back', 220, 400, {
      notches: [notch('one', 'left', 200), notch('two', 'left', 300)],
    });
    expect(walked([front, back], [side]).issues).toHaveLength(1);
  });

  it('shares ease between notches in proportion to length', () => {
    const front = (at: number) =>
      rectangle('front', 200, 408, { notches: [notch('bust level', 'right', at)] });
    const back = rectangle('back', 220, 400, { notches: [notch('bust level', 'left', 300)] });
    // A quarter of the length takes a quarter of the 8 mm.
    expect(walked([front(102), back], [{ ...side, ease: 8 }]).issues).toEqual([]);
    expect(walked([front(104), back], [{ ...side, ease: 8 }]).issues).toHaveLength(1);
  });

  it('leaves out a seam whose edge does not exist', () => {
    const { walks } = walked([rectangle('front', 200, 400)], [side]);
    expect(walks).toEqual([]);
  });
});
