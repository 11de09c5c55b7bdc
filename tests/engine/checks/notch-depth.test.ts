import { describe, expect, it } from 'vitest';
import { notchDepthFaults } from '../../../engine/checks/notch-depth.ts';
import { notchStrokes } from '../../../engine/finishing/notches.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { readSheet } from '../../../engine/reading/read-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { line, notch, polygon } from '../garments.ts';

const panel = (allowance: number): Piece => ({
  ...polygon(
    'panel',
    [
      [0, 0],
      [100, 0],
      [100, 200],
      [0, 200],
    ],
    ['top', 'right', 'bottom', 'left'].map((name) => [name, { allowance }] as const),
  ),
  notches: [notch('bust', 'right', 50)],
});

const slit = (made: Piece, from: number) =>
  made.notches.map((mark) => ({ notch: mark, strokes: [[line(point(100 + from, 50), point(112.7, 50))]] }));

describe('the depth of notches', () => {
  it('is right as they are drawn, slit or wedge, in narrow and wide allowances', () => {
    for (const allowance of [5, 6.35, 12.7, 25])
      for (const type of ['slit', 'wedge'] as const)
        expect(notchDepthFaults(panel(allowance), notchStrokes(panel(allowance), type), 0.05)).toEqual([]);
  });

  it('is wrong where a slit runs to the stitching line', () => {
    const [fault] = notchDepthFaults(panel(12.7), slit(panel(12.7), 0), 0.05);
    expect(fault).toMatchObject({ code: 'notch-too-deep', path: 'panel/right', limits: { max: 4 } });
    expect(fault?.value).toBeCloseTo(12.7, 9);
  });

  it('is measured again on the written sheet', () => {
    const { garment, cutLines } = drafted('bodice', shippedBody('leading-lady'));
    const read = readSheet(sheetSvg(garment, cutLines, {}));
    if (!read.ok) throw new Error('not read');
    const { notches } = read.value;
    const depths = read.value.garment.pieces.flatMap((piece) =>
      notchDepthFaults(piece, notches.get(piece.name) ?? [], 0.1),
    );
    expect(depths).toEqual([]);
    expect([...notches.values()].flat().length).toBeGreaterThan(20);
    const deeper = read.value.garment.pieces.flatMap((piece) =>
      notchDepthFaults(piece, notches.get(piece.name) ?? [], -0.1),
    );
    expect(deeper.length).toBeGreaterThan(20);
  });
});
