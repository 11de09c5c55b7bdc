import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { alike } from '../../../drafts/sides/alike.ts';
import { bothSides } from '../../../drafts/sides/both-sides.ts';
import { type Evaluation, evaluate } from '../../../engine/evaluate.ts';
import { outlineBounds } from '../../../engine/geometry/outline.ts';
import { mirrorImage } from '../../../engine/pattern/mirror-image.ts';
import { drafted, edgeOf, pieceOf } from '../drafted.ts';
import { errorsOf, fittedBody, fittedDress } from './sided.ts';

const plain = fittedDress();
const lowerLeft = fittedDress({ 'lower shoulder': 1, side: 'left' });
const lowerRight = fittedDress({ 'lower shoulder': 1, side: 'right' });

const names = ({ garment }: Evaluation): readonly string[] => garment.pieces.map(({ name }) => name);
const pairsApart = ({ garment }: Evaluation): readonly string[] => [
  ...new Set(garment.pieces.flatMap(({ oneOf }) => oneOf?.pair ?? [])),
];

describe('left and right pieces', () => {
  it('stay pairs where both sides were changed alike', () => {
    const each = fittedDress({ 'shorten strap': 1, side: 'left' }, { 'shorten strap': 1, side: 'right' });
    const both = fittedDress({ 'shorten strap': 1 });
    // All but what she wrote, which a garment tells as she did.
    expect({ ...each.garment, drawnFor: both.garment.drawnFor }).toEqual(both.garment);
    const lower = fittedDress({ 'lower shoulder': 1, side: 'left' }, { 'lower shoulder': 1, side: 'right' });
    expect(names(lower)).toEqual(names(plain));
  });

  it('are apart only where they differ, beside each other and counted anew', () => {
    const apart = (change: string) => pairsApart(fittedDress({ [change]: 1, side: 'left' }));
    const strapped = ['side front', 'side back', 'front strap', 'back strap', 'sleeve'];
    for (const change of ['forward shoulder', 'shorten strap', 'lengthen strap', 'lower shoulder'])
      expect(apart(change), change).toEqual([...strapped, 'side front lining', 'side back lining']);
    expect(apart('more upper arm')).toEqual(['sleeve']);
    const faced = drafted('dress', fittedBody('leading-lady', { 'lower shoulder': 1, side: 'left' }), {
      inside: 'faced',
    });
    expect(pairsApart(faced)).toEqual(strapped);
    const again = names(lowerLeft).map((name) => name.replace(/^(left|right) /, ''));
    expect([...new Set(again)]).toEqual(names(plain));
    expect(lowerLeft.garment.pieces.map(({ number }) => number)).toEqual(
      names(lowerLeft).map((_, i) => i + 1),
    );
  });

  it('are cut once each, as many in all as before', () => {
    const cut = ({ garment }: Evaluation, cloth: string): number =>
      garment.pieces
        .flatMap((piece) => piece.cut)
        .reduce((sum, count) => sum + (count.cloth === cloth ? count.count : 0), 0);
    for (const cloth of ['self', 'lining']) expect(cut(lowerLeft, cloth)).toBe(cut(plain, cloth));
    for (const piece of lowerLeft.garment.pieces.filter(({ oneOf }) => oneOf))
      for (const count of piece.cut)
        expect(count).toEqual({
          cloth: count.cloth,
          count: 1,
          onFold: false,
          pair: false,
          printedSide: count.cloth === 'lining' ? 'down' : 'up',
        });
  });

  it('are drawn as they are worn, seen from outside', () => {
    const middle = (piece: string, edge: string): number => {
      const { left, right } = outlineBounds([edgeOf(lowerLeft, piece, edge)]);
      return (left + right) / 2;
    };
    const rightOf = (piece: string, edge: string, other: string): boolean =>
      middle(piece, edge) > middle(piece, other);
    // Before her, her left is on the right; behind her, on the left; beside her right arm the front is on the right.
    expect(rightOf('left side front', 'side', 'princess lower')).toBe(true);
    expect(rightOf('right side front', 'princess lower', 'side')).toBe(true);
    expect(rightOf('right side back', 'side', 'princess')).toBe(true);
    expect(rightOf('left side back', 'princess', 'side')).toBe(true);
    expect(rightOf('right sleeve', 'front seam', 'back seam')).toBe(true);
    expect(rightOf('left sleeve', 'back seam', 'front seam')).toBe(true);
    for (const [right, left] of [
      ['right back strap', 'left back strap'],
      ['left front strap', 'right front strap'],
    ] as const) {
      expect(rightOf(right, 'outer', 'inner')).toBe(true);
      expect(rightOf(left, 'inner', 'outer')).toBe(true);
    }
  });

  it('change places, mirrored, when the other shoulder is the lower one', () => {
    for (const piece of lowerLeft.garment.pieces) {
      const other = piece.name.startsWith('left ')
        ? piece.name.replace('left ', 'right ')
        : piece.name.replace('right ', 'left ');
      const { edges, notches, lines, grain } = pieceOf(lowerRight, other);
      const seen = piece.oneOf ? mirrorImage(piece) : piece;
      expect(alike({ ...seen, edges, notches, lines, grain }, seen), piece.name).toBe(true);
    }
  });
});

describe('what is sewn and measured on both sides', () => {
  const seam = (name: string) => lowerLeft.garment.seams.find((each) => each.name === name);

  it('has a seam for each side, where a piece of that side is in it', () => {
    expect(seam('right side')?.a).toEqual([{ piece: 'right side front', edge: 'side', reversed: true }]);
    expect(seam('left side')?.a).toEqual([{ piece: 'left side front', edge: 'side' }]);
    expect(seam('side')).toBeUndefined();
    expect(seam('skirt, side')).toEqual(plain.garment.seams.find(({ name }) => name === 'skirt, side'));
  });

  it('keeps seams of one side that an insert already has', () => {
    for (const side of ['right', 'left'] as const)
      expect(seam(`front princess, upper ${side}`)?.b.map(({ piece }) => piece)).toEqual([
        `${side} side front`,
      ]);
  });

  it('measures left and right once each around the body, and each arm by itself', () => {
    const waist = lowerLeft.garment.girths.find(({ level }) => level === 'waist');
    const ofSide = waist?.parts.filter(({ piece }) => piece.endsWith('side front'));
    expect(ofSide?.map(({ piece, times }) => [piece, times])).toEqual([
      ['right side front', 1],
      ['left side front', 1],
    ]);
    const levels = lowerLeft.garment.girths.map(({ level }) => level);
    expect(levels).toContain('right upper arm');
    expect(levels).toContain('left upper arm');
  });

  it('gives an arm that needs more room an elastic and a girth of its own', () => {
    const arm = fittedDress({ 'more upper arm': 2, side: 'right' });
    expect(errorsOf(arm)).toEqual([]);
    const elastics = arm.garment.notions.filter(({ name }) => name.endsWith('sleeve elastic'));
    expect(elastics.map(({ name, count }) => [name, count])).toEqual([
      ['right sleeve elastic', 1],
      ['left sleeve elastic', 1],
    ]);
    expect((elastics[0]?.length ?? 0) - (elastics[1]?.length ?? 0)).toBeCloseTo(20, 6);
    const girth = (level: string) => arm.report.girths.find((each) => each.level === level)?.finished ?? 0;
    expect(girth('right upper arm') - girth('left upper arm')).toBeCloseTo(20, 4);
  });

  it('keep what each step was found from, and draw the left where it differs by itself', () => {
    const { steps } = lowerLeft.garment;
    const bare = (title: string | undefined): string => (title ?? '').replace(/^On the (right|left): /, '');
    for (const { title, from } of steps)
      for (const { name, origin } of from)
        if (origin.kind === 'step') expect(bare(steps[origin.number - 1]?.title), title).toBe(name);
    const drawings = new Set(steps.flatMap(({ draws }) => draws?.lines.map(({ on }) => on) ?? []));
    expect(drawings).toContain('left back strap');
    expect(drawings).not.toContain('left skirt side front');
  });

  it('tells the cutter which way up single pieces lie', () => {
    const cutOut = ({ garment }: Evaluation) =>
      garment.sewing?.find(({ title }) => title === 'Cut out')?.how.join(' ') ?? '';
    expect(cutOut(lowerLeft)).toContain('which way its printed side faces');
    expect(cutOut(plain)).not.toContain('which way its printed side faces');
  });

  it('is refused as a mistake of the draft where a piece cut whole differs', () => {
    const { garment } = plain;
    const moved = garment.pieces.map((piece) =>
      piece.name === 'insert' ? { ...piece, grain: { ...piece.grain, to: { x: 0, y: 0 } } } : piece,
    );
    expect(() => bothSides(garment, { ...garment, pieces: moved })).toThrow('The insert is cut whole');
  });
});

describe('an armhole notch that lies on the strap of one side only', () => {
  it('gives that side a join more, and both are sewn', () => {
    const { garment, report } = drafted(
      'dress',
      {
        name: 'prompter',
        units: 'in',
        bustGirth: 36.25,
        waistGirth: 29.5,
        hipGirth: 38.75,
        backNeckPointToWaist: 16.125,
        fitting: [{ 'lengthen strap': 0.315, side: 'right' }],
      },
      { waistEase: 18.24, strapWidth: 30.57, sleeve: 'plain' },
    );
    expect(report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    const of = (side: string) => garment.joins.filter(({ name }) => name.startsWith(`${side} `)).length;
    expect(of('left')).not.toBe(of('right'));
  });

  it('is refused by name where that side would have a seam that the other has not', () => {
    const dress = garments.find(({ name }) => name === 'dress');
    const fitted = fittedBody('leading-lady', { 'forward shoulder': 0.638, side: 'right' });
    const made = dress && evaluate(dress, fitted, deepNecks);
    expect(made?.ok).toBe(false);
    expect(made?.issues.map(({ code }) => code)).toEqual(['fitting-cannot-agree', 'fitting-not-one-sided']);
  });
});

/** Necklines that end so near the underarm that the armhole notch lies on the strap. */
const deepNecks = { necklineDepth: 0.465, backNecklineDepth: 127.2, strapWidth: 28.6, waistEase: 37.2 };
