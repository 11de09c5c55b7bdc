import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeLength, edgeStart, pointAlong } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import { sheetSvg } from '../../engine/render/sheet.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';

const lady = shippedBody('leading-lady');
const dress = drafted('dress', lady);

const notchesOf = (evaluation: Evaluation, piece: string, edge: string) =>
  pieceOf(evaluation, piece).notches.filter((notch) => notch.edge === edge);

const written = ({ garment, cutLines }: Evaluation): string => sheetSvg(garment, cutLines, {});

describe('match points', () => {
  it('tell where the under-bust seam meets the side front, on both sides of the insert', () => {
    const [underBust] = notchesOf(dress, 'side front', 'princess upper').filter(
      ({ name }) => name === 'under-bust seam',
    );
    const upper = edgeOf(dress, 'side front', 'princess upper');
    const lower = edgeOf(dress, 'side front', 'princess lower');
    expect(underBust?.mark).toBe('single');
    const [from, to] = [
      pointAlong(upper, underBust?.at ?? -1).point,
      pointAlong(lower, edgeLength(lower)).point,
    ];
    expect(distance(from, to)).toBeLessThan(1e-6);
    for (const edge of ['left side', 'right side'])
      expect(notchesOf(dress, 'insert', edge).map(({ name }) => name)).toContain('under-bust seam');
  });

  it('keep the ends of a strap apart: one notch in front, two behind, on the strap and on the panel', () => {
    const marks = (piece: string, edge: string) =>
      notchesOf(dress, piece, edge).map(({ name, mark }) => [name, mark]);
    for (const [piece, edge] of [
      ['side front', 'strap'],
      ['front strap', 'front end'],
    ] as const)
      expect(marks(piece, edge)).toContainEqual(['strap end', 'single']);
    for (const [piece, edge] of [
      ['side back', 'strap'],
      ['back strap', 'back end'],
    ] as const)
      expect(marks(piece, edge)).toContainEqual(['strap end', 'double']);
  });

  it.each([
    ['back', 'centre back', 'centre back', 'skirt centre back', 'centre back'],
    ['side', 'side front', 'side', 'skirt side front', 'side'],
    ['side', 'side back', 'side', 'skirt side back', 'side'],
  ])(
    'tell where a zip at the %s begins on the %s and ends on the skirt',
    (opening, panel, edge, gore, goreEdge) => {
      const opened = drafted('dress', lady, { opening });
      expect(notchesOf(opened, panel, edge).map(({ name }) => name)).toContain('top of the zip');
      expect(notchesOf(opened, gore, goreEdge).map(({ name }) => name)).toContain('end of the zip');
      const zip = opened.garment.notions.find(({ name }) => name === 'zip')?.length ?? 0;
      const at = (piece: string, on: string, name: string) =>
        notchesOf(opened, piece, on).find((notch) => notch.name === name)?.at ?? 0;
      const whole = edgeLength(edgeOf(opened, panel, edge));
      const goreWhole = edgeLength(edgeOf(opened, gore, goreEdge));
      const top =
        opening === 'back' ? at(panel, edge, 'top of the zip') : whole - at(panel, edge, 'top of the zip');
      const end =
        opening === 'back'
          ? goreWhole - at(gore, goreEdge, 'end of the zip')
          : at(gore, goreEdge, 'end of the zip');
      expect(top + end).toBeCloseTo(zip, 6);
    },
  );
});

describe('bust points', () => {
  it('are crosses on the insert, where the princess line passes to their side', () => {
    const { marks, lines } = pieceOf(dress, 'insert');
    const crosses = marks.filter(({ kind }) => kind === 'cross');
    const level = lines.find(({ name }) => name === 'bust level');
    expect(crosses.map(({ name }) => name)).toEqual(['right bust point', 'left bust point']);
    const [right, left] = crosses;
    expect((right?.at.x ?? 0) + (left?.at.x ?? 1)).toBeCloseTo(0, 9);
    // The line passes 5 mm beside the point; spread for gathers, by rather more.
    const away = level && right ? distance(edgeStart(level), right.at) : 0;
    expect(away).toBeGreaterThan(5 - 1e-9);
    expect(away).toBeLessThan(5 * 2.6);
    expect(pieceOf(dress, 'side front').marks).toEqual([]);
  });

  it('are on the side front, where it passes on the other side', () => {
    const other = drafted('dress', lady, { princessOffset: -8 });
    expect(pieceOf(other, 'insert').marks.filter(({ kind }) => kind === 'cross')).toEqual([]);
    const [cross] = pieceOf(other, 'side front').marks;
    const level = pieceOf(other, 'side front').lines.find(({ name }) => name === 'bust level');
    expect(cross?.kind).toBe('cross');
    expect(level && cross ? distance(edgeStart(level), cross.at) : 0).toBeCloseTo(8, 6);
  });
});

describe('what is written on the pieces', () => {
  const sheet = written(dress);

  it('tells the cup and the four girths of her body', () => {
    expect(sheet).toContain('cup C, bust 920, under-bust 750,');
    expect(sheet).toContain('waist 740, hip 990 mm');
  });

  it.each(shippedBodies)('tells them on the first piece at least, whatever room there is: %s', (name) => {
    const evaluation = drafted('skirt', shippedBody(name));
    expect(written(evaluation)).toContain(`cup ${evaluation.garment.wearer?.cup}`);
  });

  it('tells how long to cut the elastic, on the casing of the sleeve', () => {
    expect(sheet).toContain('elastic: cut 290 mm, lapped to 277.3 mm');
  });

  it('has slash lines on the insert only when they are asked for', () => {
    const slashed = drafted('dress', lady, { slashLinesDrawn: 'yes', slashLines: 5 });
    const lines = (evaluation: Evaluation) =>
      pieceOf(evaluation, 'insert').lines.filter(({ kind }) => kind === 'slash');
    expect(lines(dress)).toEqual([]);
    expect(lines(slashed)).toHaveLength(10);
  });
});

describe('the elastic of a sleeve', () => {
  it('is made for the upper arm, and for the elbow where a long puff reaches it', () => {
    const girth = (styling: object, body = lady) =>
      drafted('dress', body, styling).garment.notions.find(({ name }) => name === 'sleeve elastic')?.length;
    expect(girth({})).toBeCloseTo(290, 9);
    expect(girth({ sleeve: 'long puff' }, { ...lady, elbowGirth: 27 })).toBeCloseTo(270, 9);
    expect(girth({ sleeve: 'long puff' }, { ...lady, elbowGirth: 25 })).toBeCloseTo(250, 9);
  });
});
