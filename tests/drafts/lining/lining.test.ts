import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { surveyBody } from '../../plausible-bodies.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from '../drafted.ts';
import { apart } from './apart.ts';

const turn = 2;
const lady = shippedBody('leading-lady');
const lined = drafted('dress', lady, { turnOfCloth: turn });
const sleeveless = { sleeve: 'none', turnOfCloth: turn };
const plain = { front: 'plain' };
const wholePlain = { shoulder: 'whole', front: 'plain' };

const lengthOf = (of: Evaluation, piece: string, edge: string): number => edgeLength(edgeOf(of, piece, edge));

const counts = (of: Evaluation, cloth: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    of.garment.pieces.flatMap(({ name, cut }) =>
      cut.filter((each) => each.cloth === cloth).map(({ count }) => [name, count] as const),
    ),
  );

const errors = (of: Evaluation): readonly string[] =>
  of.report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('the lining of a bodice', () => {
  it('has a panel for each panel of the bodice, cut of lining and not of self cloth; straps and insert face themselves', () => {
    expect(counts(lined, 'lining')).toEqual({
      'front strap': 2,
      'back strap': 2,
      'centre front lining': 1,
      'side front lining': 2,
      'centre back lining': 2,
      'side back lining': 2,
    });
    expect(counts(lined, 'self')).toMatchObject({ 'centre front': 1, 'side front': 2, insert: 1 });
    for (const name of ['insert lining', 'front strap lining'])
      expect(lined.garment.pieces.find((piece) => piece.name === name)).toBeUndefined();
    const parted = drafted('dress', lady, { ...wholePlain, centreFront: 'parted' });
    expect(counts(parted, 'lining')).toMatchObject({
      'upper centre front lining': 1,
      'centre front lining': 1,
    });
  });

  // A lining is cut smaller at its finished edges by the turn of the cloth: common practice, no source.
  it.each([
    [{}, 'centre back', 'neckline'],
    [{}, 'side front', 'armhole underarm'],
    [{}, 'side back', 'armhole upper'],
    [{}, 'side back', 'armhole underarm'],
    [plain, 'centre front', 'neckline'],
    [wholePlain, 'side front', 'armhole upper'],
    [{ ...wholePlain, princess: 'armhole' }, 'centre front', 'armhole upper'],
    [{ ...wholePlain, princess: 'armhole' }, 'centre back', 'armhole upper'],
    [{ ...wholePlain, neckline: 'round' }, 'centre front', 'neckline'],
  ])('is set back by the turn of the cloth, about evenly: %o, %s, %s', (styling, panel, edge) => {
    const of = drafted('dress', lady, { ...styling, turnOfCloth: turn });
    const finished = pieceOf(of, panel).edges.filter(({ name }) => /^(neckline|armhole)/.test(name));
    for (const mm of apart(edgeOf(of, `${panel} lining`, edge), finished)) {
      expect(mm).toBeGreaterThan(0.6 * turn);
      expect(mm).toBeLessThan(1.5 * turn);
    }
  });

  it('is set back from both sides of a neckline’s corner', () => {
    const of = drafted('dress', lady, { ...wholePlain, turnOfCloth: turn });
    const sides = ['neckline', 'neckline side'];
    for (const edge of sides) {
      const back = apart(
        edgeOf(of, 'centre front lining', edge),
        sides.map((each) => edgeOf(of, 'centre front', each)),
      );
      for (const mm of back.slice(1, -1)) {
        expect(mm).toBeGreaterThan(0.9 * turn);
        expect(mm).toBeLessThan(1.1 * turn);
      }
    }
    expect(edgeEnd(edgeOf(of, 'centre front lining', 'neckline'))).toEqual(
      edgeStart(edgeOf(of, 'centre front lining', 'neckline side')),
    );
  });

  it('is as long as the panels along its own seams, less the turn of the cloth at their finished ends', () => {
    expect(lengthOf(lined, 'side front lining', 'side')).toBeCloseTo(
      lengthOf(lined, 'side front', 'side') - turn,
      6,
    );
    expect(lengthOf(lined, 'centre back lining', 'princess')).toBeCloseTo(
      lengthOf(lined, 'side back lining', 'princess'),
      6,
    );
    expect(lengthOf(lined, 'centre back lining', 'centre back')).toBeCloseTo(
      lengthOf(lined, 'centre back', 'centre back') - turn,
      6,
    );
    const whole = drafted('dress', lady, { ...wholePlain, princess: 'armhole', turnOfCloth: turn });
    expect(lengthOf(whole, 'centre front lining', 'shoulder')).toBeCloseTo(
      lengthOf(whole, 'centre front', 'shoulder') - 2 * turn,
      6,
    );
  });

  it('has the girths of the bodice that go over panels alone', () => {
    const levels = (of: Evaluation) =>
      of.report.girths.flatMap(({ level }) => (level.endsWith(', lining') ? [level] : []));
    expect(levels(lined)).toEqual(['under-bust, lining', 'waist, lining']);
    const whole = drafted('dress', lady, plain);
    expect(levels(whole)).toEqual(['bust, lining', 'under-bust, lining', 'waist, lining']);
    for (const of of [lined, whole])
      for (const level of levels(of)) {
        const girth = (name: string) => of.report.girths.find((found) => found.level === name)?.finished;
        expect(girth(level)).toBeCloseTo(girth(level.replace(', lining', '')) ?? 0, 6);
      }
  });

  it('is held in or eased by no more than a few millimetres where it is sewn to a finished edge', () => {
    for (const body of [lady, ...Array.from({ length: 20 }, (_, i) => surveyBody(500 + i))])
      for (const seam of drafted('dress', body, sleeveless).garment.seams)
        if (seam.name.startsWith('lining, ')) expect(Math.abs(seam.ease)).toBeLessThan(2 * turn);
  });

  it('is felled over sleeves, and sewn to armholes that have none', () => {
    const felled = (of: Evaluation) =>
      of.garment.seams.filter((seam) => seam.felled).map((seam) => seam.name);
    expect(felled(lined)).toContain('lining, front underarm');
    expect(felled(lined)).toContain('lining, back armhole');
    expect(felled(drafted('dress', lady, sleeveless)).join()).not.toMatch(/armhole|underarm/);
  });

  it('is sewn to a plain front’s neckline, and felled to the seams of an insert', () => {
    const seam = (styling: object, name: string) =>
      drafted('dress', lady, styling).garment.seams.find((each) => each.name === name);
    expect(seam(plain, 'lining, front neckline')?.felled).toBeUndefined();
    expect(seam(plain, 'lining, front neckline')?.b).toEqual([{ piece: 'centre front', edge: 'neckline' }]);
    expect(seam({}, 'lining, front neckline')).toBeUndefined();
    expect(seam({}, 'lining, under-bust')?.felled).toBe(true);
    expect(seam({ ...plain, centreFront: 'parted' }, 'lining, under-bust')?.felled).toBeUndefined();
  });

  it('meets at the centre back in a seam when the dress opens at the side', () => {
    const seam = (opening: string) =>
      drafted('dress', lady, { opening }).garment.seams.find(({ name }) => name === 'lining, centre back');
    expect(seam('back')?.felled).toBe(true);
    expect(seam('side')?.a).toEqual(seam('side')?.b);
  });

  it('writes the girths on the lining that it closes itself: over a gathered front there is no bust', () => {
    const [bust, underBust] = pieceOf(lined, 'side front').lines;
    expect(pieceOf(lined, 'side front lining').lines.map(({ name, text }) => [name, text])).toEqual([
      [bust?.name, undefined],
      [underBust?.name, underBust?.text],
    ]);
  });
});

describe('every finish of the inside', () => {
  const finishes = ['lined', 'faced'].flatMap((inside) =>
    ['puff', 'none'].flatMap((sleeve) =>
      ['back', 'side'].map((opening) => ({ inside, sleeve, opening, necklineGathers: 'fixed' })),
    ),
  );

  it.each(finishes)('is true for all bodies: $inside, sleeve $sleeve, opening $opening', (styling) => {
    for (const name of shippedBodies)
      expect(errors(drafted('dress', shippedBody(name), styling))).toEqual([]);
  });
});
