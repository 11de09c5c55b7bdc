import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../../engine/geometry/bounds.ts';
import { inflectionCount } from '../../../engine/geometry/inflections.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { widthAt } from '../../../engine/shaping/own-piece.ts';
import { type Spreading, slashAndSpread } from '../../../engine/shaping/slash-and-spread.ts';
import { uniform } from '../../uniform.ts';
import { anyPanel, codesOf, edgeNamed, made, panelOf, rectangle } from './pieces.ts';
import { lengthOf, plainShape, spread } from './spreads.ts';

describe('slash lines and the shape of the piece', () => {
  const anyHollow = fc.record({
    width: fc.double({ min: 120, max: 200, noNaN: true }),
    height: fc.double({ min: 200, max: 500, noNaN: true }),
    flare: uniform(0, 60),
    bow: uniform(-60, 0),
  });

  test('are refused just where a straight line would run out at a hollow side', () => {
    fc.assert(
      fc.property(anyHollow, fc.integer({ min: 1, max: 12 }), (shape, lines) => {
        const piece = panelOf({ ...plainShape, ...shape });
        const share = lines / (lines + 1);
        // The line nearest the side, against the outline's width at some heights; the front is upright at 0.
        const [top, hem] = [shape.width * share, (shape.width + shape.flare) * share];
        const room = Array.from({ length: 400 }, (_, i) => {
          const part = (i + 0.5) / 400;
          return widthAt(piece, shape.height * part) - (top + (hem - top) * part);
        }).reduce((least, each) => Math.min(least, each));
        const codes = codesOf(slashAndSpread(piece, { from: 'top', to: 'hem', lines, amount: 20 }));
        if (Math.abs(room) > 0.1) expect(codes).toEqual(room > 0 ? [] : ['slash-leaves-piece']);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('a narrow wavy hem opened to nearly three times its width stays near its strips', () => {
    const shape = { ...plainShape, width: 120, height: 120, drop: 30, sag: -25 };
    const { piece, deviation } = made(
      slashAndSpread(panelOf(shape), { from: 'top', to: 'hem', lines: 12, amount: 200 }),
    );
    expect(deviation).toBeLessThan(4);
    expect(inflectionCount(edgeNamed(piece, 'hem'))).toBeLessThan(2);
  });

  test('a hollow arch opened wide at its middle runs flat there and does not swing above', () => {
    const arch = panelOf({ ...plainShape, width: 120, height: 275, sag: -25 });
    const hem = edgeNamed(spread(arch, { lines: 1, amount: 118 }), 'hem');
    // The crown of this cubic lies 3/4 of its handles' 25 mm above its ends.
    expect(boundingBox(hem.curves).top).toBeGreaterThan(275 - 18.75 - 2);
    expect(inflectionCount(hem)).toBe(0);
  });
});

describe('slashing from one notch to another', () => {
  const marked = rectangle(200, 300, [
    { name: 'a', edge: 'hem', at: 60, mark: 'single' },
    { name: 'b', edge: 'hem', at: 140, mark: 'single' },
    { name: 'c', edge: 'side', at: 100, mark: 'single' },
    { name: 'f', edge: 'top', at: 60, mark: 'single' },
    { name: 'g', edge: 'top', at: 140, mark: 'single' },
    { name: 'd', edge: 'top', at: 40, mark: 'single' },
    { name: 'e', edge: 'top', at: 160, mark: 'single' },
    { name: 'd', edge: 'hem', at: 180, mark: 'single' },
    { name: 'e', edge: 'hem', at: 20, mark: 'single' },
  ]);
  const places = (between: readonly [string, string], lines = 3): readonly (readonly number[])[] =>
    spread(marked, { lines, amount: 1e-6, between })
      .lines.filter(({ kind }) => kind === 'slash')
      .map(({ curves }) => [curves[0]?.from.x ?? 0, curves[0]?.to.x ?? 0].map((x) => Math.round(x)));

  test.each<[readonly [string, string], readonly number[]]>([
    [
      ['a', 'b'],
      [80, 100, 120],
    ],
    [
      ['b', 'a'],
      [80, 100, 120],
    ],
  ])('%j: the lines lie between them, upright, on either edge', (between, xs) => {
    expect(places(between)).toEqual(xs.map((x) => [x, x]));
  });

  test('notches of the same names on both edges bound the lines at both', () => {
    expect(places(['d', 'e'])).toEqual([
      [70, 60],
      [100, 100],
      [130, 140],
    ]);
  });

  test('the edge grows between the notches by the amount and nowhere else', () => {
    const wide = spread(marked, { amount: 40, between: ['a', 'b'] });
    const at = new Map(wide.notches.map((notch) => [notch.name, notch.at]));
    expect((at.get('b') ?? 0) - (at.get('a') ?? 0)).toBeCloseTo(80 + 40, 6);
    expect(at.get('a')).toBeCloseTo(60, 6);
  });

  test('any panel, hinged: what lies outside the notches keeps its shape but for the blend', () => {
    fc.assert(
      fc.property(anyPanel, fc.double({ min: 5, max: 60, noNaN: true }), (panel, amount) => {
        const hem = lengthOf(panel, 'hem');
        const notches = [0.4, 0.6].map((share, i) => {
          return { name: `${i}`, edge: 'hem', at: share * hem, mark: 'single' } as const;
        });
        const how = { from: 'hem', to: 'top', hinge: 'top', lines: 3, amount };
        const between = ['0', '1'] as const;
        const wide = made(slashAndSpread({ ...panel, notches }, { ...how, between })).piece;
        const [one, other] = wide.notches.map(({ at }) => at);
        expect(Math.abs((other ?? 0) - (one ?? 0) - 0.2 * hem - amount)).toBeLessThan(0.15 * amount + 1);
        expect(isSimple(wide.edges)).toBe(true);
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  test.each<[string, readonly [string, string], number]>([
    ['no-such-notch', ['a', 'waist'], 3],
    ['no-such-notch', ['c', 'a'], 3],
    ['notches-apart', ['a', 'f'], 3],
    ['notches-apart', ['a', 'a'], 3],
    ['too-many-slashes', ['a', 'b'], 40],
  ])('is refused: %s', (code, between, lines) => {
    const how = { from: 'top', to: 'hem', lines, amount: 40, between };
    expect(codesOf(slashAndSpread(marked, how))).toEqual([code]);
  });
});

describe('a spread that makes no sense', () => {
  test.each<[string, Partial<Spreading>]>([
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
