import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { insideAngle } from '../../../engine/checks/corner.ts';
import { isClosed } from '../../../engine/checks/outlines.ts';
import { edgeEnd, edgeLength, edgeStart, pointAlong } from '../../../engine/geometry/edge.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { mirrorImage } from '../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { uniform } from '../../uniform.ts';
import { line } from '../geometry/generators.ts';
import { anyPanel, edgeNamed } from '../shaping/pieces.ts';

/** A panel with one of everything that can be drawn on a piece. */
const marked: fc.Arbitrary<Piece> = fc
  .record({ panel: anyPanel, share: uniform(0, 1) })
  .map(({ panel, share }) => ({
    ...panel,
    notches: panel.edges.map((edge) => ({
      name: `on ${edge.name}`,
      edge: edge.name,
      at: share * edgeLength(edge),
      mark: 'single' as const,
    })),
    lines: [{ name: 'hip level', kind: 'level', curves: [line(0, 50, 100, 50)], fullness: 3, text: 'hip' }],
    marks: [{ name: 'hole', kind: 'buttonhole', at: { x: 30, y: 40 }, angle: share, length: 12 }],
  }));

const forAll = (holds: (piece: Piece, image: Piece) => void): void =>
  fc.assert(
    fc.property(marked, (piece) => holds(piece, mirrorImage(piece))),
    { numRuns: 40, endOnFailure: true },
  );

describe('the mirror image of a piece', () => {
  test('closes, runs clockwise and has the same area', () => {
    forAll((piece, image) => {
      expect(isClosed(image.edges)).toBe(true);
      expect(signedArea(image.edges)).toBeCloseTo(signedArea(piece.edges), 6);
    });
  });

  test('keeps every length, and every corner between the same two edges', () => {
    forAll((piece, image) => {
      for (const [i, edge] of piece.edges.entries()) {
        expect(edgeLength(edgeNamed(image, edge.name))).toBeCloseTo(edgeLength(edge), 5);
        const next = piece.edges[(i + 1) % piece.edges.length] ?? edge;
        expect(insideAngle(image, edge.name, next.name)).toBeCloseTo(
          insideAngle(piece, edge.name, next.name) ?? Number.NaN,
          9,
        );
      }
    });
  });

  test('has each notch, line, mark and grainline where a mirror shows it', () => {
    forAll((piece, image) => {
      for (const [i, notch] of piece.notches.entries()) {
        const at = pointAlong(edgeNamed(piece, notch.edge), notch.at).point;
        const seen = pointAlong(edgeNamed(image, notch.edge), image.notches[i]?.at ?? Number.NaN).point;
        expect(seen.x).toBeCloseTo(-at.x, 4);
        expect(seen.y).toBeCloseTo(at.y, 4);
      }
      const [level] = image.lines;
      expect(level && [edgeStart(level).x, edgeEnd(level).x]).toEqual([-100, 0]);
      expect(level).toMatchObject({ fullness: 3, text: 'hip' });
      const [hole] = image.marks;
      const angle = piece.marks[0]?.angle ?? Number.NaN;
      expect(hole?.at).toEqual({ x: -30, y: 40 });
      expect(Math.cos(hole?.angle ?? 0)).toBeCloseTo(-Math.cos(angle), 9);
      expect(Math.sin(hole?.angle ?? 0)).toBeCloseTo(Math.sin(angle), 9);
      expect(image.grain.from).toEqual({ x: -piece.grain.from.x, y: piece.grain.from.y });
    });
  });

  test('mirrored again is the piece itself', () => {
    forAll((piece, image) => {
      const again = mirrorImage(image);
      const { notches, marks, ...drawn } = piece;
      expect(again).toMatchObject(drawn);
      for (const [i, { at }] of notches.entries()) expect(again.notches[i]?.at).toBeCloseTo(at, 5);
      expect(again.marks[0]?.angle).toBeCloseTo(marks[0]?.angle ?? Number.NaN, 12);
    });
  });
});
