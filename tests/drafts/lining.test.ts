import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeLength, pointAlong } from '../../engine/geometry/edge.ts';
import { nearestOnEdge } from '../../engine/geometry/nearest.ts';
import { surveyBody } from '../plausible-bodies.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';

const turn = 2;
const lady = shippedBody('leading-lady');
const lined = drafted('dress', lady, { turnOfCloth: turn });
const sleeveless = { sleeve: 'none', turnOfCloth: turn };

const lengthOf = (of: Evaluation, piece: string, edge: string): number => edgeLength(edgeOf(of, piece, edge));

/** How far an inside piece’s edge lies from the edge it finishes, at nine places, mm. */
function setBack(of: Evaluation, inside: string, panel: string, edge: string): readonly number[] {
  const own = edgeOf(of, inside, edge);
  const length = edgeLength(own);
  return Array.from({ length: 9 }, (_, i) => {
    const { point } = pointAlong(own, (length * i) / 8);
    return nearestOnEdge(edgeOf(of, panel, edge), point).distance;
  });
}

const counts = (of: Evaluation, cloth: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    of.garment.pieces.flatMap(({ name, cut }) =>
      cut.filter((each) => each.cloth === cloth).map(({ count }) => [name, count] as const),
    ),
  );

const errors = (of: Evaluation): readonly string[] =>
  of.report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('the lining of a bodice', () => {
  it('has a panel for each panel of the bodice, cut of lining and not of self cloth', () => {
    expect(counts(lined, 'lining')).toEqual({
      'centre front lining': 1,
      'side front lining': 2,
      'centre back lining': 2,
      'side back lining': 2,
    });
    expect(counts(lined, 'self')).toMatchObject({ 'centre front': 1, 'side front': 2, insert: 1 });
    expect(lined.garment.pieces.find(({ name }) => name === 'insert lining')).toBeUndefined();
  });

  // A lining is cut smaller at its finished edges by the turn of the cloth: common practice, no source.
  it.each([
    ['centre back', 'neckline'],
    ['side front', 'armhole upper'],
    ['side front', 'armhole underarm'],
    ['side back', 'armhole upper'],
    ['side back', 'armhole underarm'],
  ])('is set back by the turn of the cloth, about evenly: %s, %s', (panel, edge) => {
    for (const mm of setBack(lined, `${panel} lining`, panel, edge)) {
      expect(mm).toBeGreaterThan(0.6 * turn);
      expect(mm).toBeLessThan(1.5 * turn);
    }
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
  });

  it('has the waist and the under-bust girth of the bodice', () => {
    const girth = (level: string) => lined.report.girths.find((found) => found.level === level)?.finished;
    expect(girth('waist, lining')).toBeCloseTo(girth('waist') ?? 0, 6);
    expect(girth('under-bust, lining')).toBeCloseTo(girth('under-bust') ?? 0, 6);
  });

  it('is held in or eased by no more than a few millimetres where it is sewn to a finished edge', () => {
    for (const body of [lady, ...Array.from({ length: 20 }, (_, i) => surveyBody(500 + i))])
      for (const seam of drafted('dress', body, sleeveless).garment.seams)
        if (seam.name.startsWith('lining, ')) expect(Math.abs(seam.ease)).toBeLessThan(2 * turn);
  });

  it('is felled over sleeves, and sewn to armholes that have none', () => {
    const felled = (of: Evaluation) =>
      of.garment.seams.filter((seam) => seam.felled).map((seam) => seam.name);
    expect(felled(lined)).toContain('lining, front armhole');
    expect(felled(drafted('dress', lady, sleeveless))).not.toContain('lining, front armhole');
  });

  it('meets at the centre back in a seam when the dress opens at the side', () => {
    const seam = (opening: string) =>
      drafted('dress', lady, { opening }).garment.seams.find(({ name }) => name === 'lining, centre back');
    expect(seam('back')?.felled).toBe(true);
    expect(seam('side')?.a).toEqual(seam('side')?.b);
  });
});

describe('a bodice that is faced', () => {
  it('needs only a back neck facing under sleeves, and armhole facings without', () => {
    const names = (styling: object) =>
      drafted('dress', lady, { inside: 'faced', ...styling }).garment.pieces.flatMap(({ name }) =>
        name.endsWith('facing') ? [name] : [],
      );
    expect(names({})).toEqual(['back neck facing']);
    expect(names({ sleeve: 'none' })).toEqual([
      'back neck facing',
      'front armhole facing',
      'back armhole facing',
    ]);
  });

  it('has facings set back like a lining, that end below the neckline and the underarm', () => {
    const faced = drafted('dress', lady, { inside: 'faced', ...sleeveless });
    for (const [facing, panel, edge] of [
      ['back neck facing', 'centre back', 'neckline'],
      ['front armhole facing', 'side front', 'armhole upper'],
      ['back armhole facing', 'side back', 'armhole underarm'],
    ] as const)
      for (const mm of setBack(faced, facing, panel, edge)) {
        expect(mm).toBeGreaterThan(0.6 * turn);
        expect(mm).toBeLessThan(1.5 * turn);
      }
    expect(lengthOf(faced, 'back neck facing', 'centre back')).toBeCloseTo(60, 6);
    expect(lengthOf(faced, 'front armhole facing', 'side')).toBeCloseTo(50, 6);
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

  it.each(finishes)('leaves no edge raw: $inside, sleeve $sleeve, opening $opening', (styling) => {
    const { garment } = drafted('dress', lady, styling);
    const refs = [
      ...garment.seams.flatMap(({ a, b }) => [...a, ...b]),
      ...(garment.sewing ?? []).flatMap(({ turns = [], catches = [] }) => [...turns, ...catches]),
    ].map(({ piece, edge }) => `${piece}/${edge}`);
    const raw = garment.pieces.flatMap(({ name, edges }) =>
      edges.flatMap(({ name: edge, turn: becomes }) =>
        becomes === 'fold' || refs.includes(`${name}/${edge}`) ? [] : [`${name}/${edge}`],
      ),
    );
    expect(raw).toEqual([]);
  });

  it('writes the girths of the panels on the lining too', () => {
    expect(pieceOf(lined, 'side front lining').lines.map(({ text }) => text)).toEqual(
      pieceOf(lined, 'side front').lines.map(({ text }) => text),
    );
  });
});
