import { describe, expect, test } from 'vitest';
import { checkGarment } from '../../../engine/checks/check-garment.ts';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { dartCapFaults, dartLegFaults } from '../../../engine/checks/darts.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { readSheet } from '../../../engine/reading/read-sheet.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { withDartsMarked } from '../../../engine/shaping/mark-darts.ts';
import { line } from '../geometry/generators.ts';
import { edge, edgeNamed, pieceOf, rectangle } from '../shaping/pieces.ts';

/** A front with a dart of 30 mm in its side, pressed down; its left leg ends `longer` mm farther out. */
const front = (longer = 0): Piece => ({
  ...withDartsMarked(
    pieceOf([
      edge('shoulder', line(0, 0, 200, 0)),
      edge('side above', line(200, 0, 200, 100)),
      edge('leg a', line(200, 100, 90, 115)),
      edge('leg b', line(90, 115, 200 + longer, 130)),
      edge('side below', line(200 + longer, 130, 200, 300)),
      edge('waist', line(200, 300, 0, 300)),
      edge('front', line(0, 300, 0, 0)),
    ]),
  ),
  name: 'front',
});

/** The front sewn to a back along the side, dart closed. */
function sewn(piece: Piece): Garment {
  const side = ['side above', 'side below'].map((name) => edgeLength(edgeNamed(piece, name)));
  const back = {
    ...rectangle(
      150,
      side.reduce((sum, length) => sum + length, 0),
    ),
    name: 'back',
    number: 2,
  };
  const seam = {
    name: 'side',
    a: [
      { piece: 'front', edge: 'side above' },
      { piece: 'front', edge: 'side below' },
    ],
    b: [{ piece: 'back', edge: 'front', reversed: true as const }],
    ease: 0,
    gatherRatio: 1,
  };
  return {
    name: 'trial',
    body: 'prompter',
    pieces: [piece, back],
    seams: [seam],
    joins: [],
    girths: [],
    shapes: [],
    notions: [],
    steps: [],
    issues: [],
  };
}

const codes = (issues: readonly { readonly code: string }[]): readonly string[] =>
  issues.map(({ code }) => code);

describe('a garment with a dart', () => {
  const garment = sewn(front());
  const cutLines = cuttingLines(garment, PARALLEL);

  test('walks its seam with the dart closed, and can be cut', () => {
    const { seams, issues } = checkGarment(garment);
    expect(seams[0]?.mismatch).toBeLessThan(1e-6);
    expect(codes(issues)).toEqual([]);
    expect(cutReady(garment, cutLines, 0.05)).toEqual([]);
  });

  test('walks as well from its written sheet, darts and all', () => {
    const walked = walkSheet(sheetSvg(garment, cutLines, {}));
    if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
    expect(walked.value.issues).toEqual([]);
    expect(walked.value.seams[0]?.mismatch).toBeLessThan(0.01);
    const read = readSheet(sheetSvg(garment, cutLines, { notches: 'wedge' }));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const notches = (each: Garment) =>
      each.pieces[0]?.notches.map(({ edge: on, at }) => [on, Math.round(at * 100)]);
    expect(notches(read.value.garment)).toEqual(notches(garment));
  });

  test('whose written cutting line runs into the dart is found out', () => {
    const plain = { ...garment, pieces: garment.pieces.map(withoutDarts) };
    const walked = walkSheet(sheetSvg(garment, cuttingLines(plain, PARALLEL), {}));
    if (!walked.ok) throw new Error(JSON.stringify(walked.issues));
    expect(codes(walked.value.issues)).toContain('dart-not-flush');
  });
});

describe('a dart that opens towards another part of its piece', () => {
  test('is looked at across its own mouth, the nearest that its seams run on to', () => {
    const arms = {
      ...withDartsMarked(
        pieceOf(
          [
            edge('right', line(300, 0, 300, 300)),
            edge('right hem', line(300, 300, 200, 300)),
            edge('inner below', line(200, 300, 200, 215)),
            edge('leg a', line(200, 215, 270, 200)),
            edge('leg b', line(270, 200, 200, 185)),
            edge('inner above', line(200, 185, 200, 100)),
            edge('bridge', line(200, 100, 100, 100)),
            edge('inner left', line(100, 100, 100, 300)),
            edge('left hem', line(100, 300, 0, 300)),
            edge('left', line(0, 300, 0, 0)),
            edge('top', line(0, 0, 300, 0)),
          ],
          [],
          50,
        ),
      ),
      name: 'arms',
    };
    expect(dartCapFaults(arms, cuttingLine(arms, PARALLEL), 0.05)).toEqual([]);
  });
});

describe('a dart that opens at an edge without allowance', () => {
  test('lies flush where its mouth is cut on the stitching line', () => {
    const piece = front();
    const raw = {
      ...piece,
      edges: piece.edges.map((each): PieceEdge => (each.turn === 'dart' ? each : { ...each, allowance: 0 })),
    };
    expect(dartCapFaults(raw, cuttingLine(raw, PARALLEL), 0.05)).toEqual([]);
  });
});

/** The same with the dart cut out, an allowance along its legs. */
const withoutDarts = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map(
    (each): PieceEdge => (each.turn === 'dart' ? { ...each, turn: 'seam', allowance: 5 } : each),
  ),
});

describe('the legs of a dart', () => {
  test('are walked along each other: a little apart is a warning with the difference', () => {
    const piece = front(2);
    const [found] = dartLegFaults(piece, 0.05);
    const difference = Math.hypot(112, 15) - Math.hypot(110, 15);
    expect(found).toMatchObject({ code: 'dart-legs-differ', severity: 'warning', path: 'front/leg a' });
    expect(found?.value).toBeCloseTo(difference, 9);
    const garment = sewn(piece);
    expect(cutReady(garment, cuttingLines(garment, PARALLEL), 0.05)).toEqual([]);
  });

  test('come in pairs', () => {
    const piece = front();
    const lone = piece.edges.map(
      (each): PieceEdge => (each.name === 'leg b' ? { ...each, turn: 'seam' } : each),
    );
    expect(codes(dartLegFaults({ ...piece, edges: lone }, 0.05))).toEqual(['dart-leg-alone']);
  });
});
