import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { movedBy, type Transform, transformedCurve, turnedBy } from '../../../engine/geometry/transform.ts';
import { drawing } from '../../../engine/render/drawing.ts';
import { finishedPieces } from '../../../engine/render/finish.ts';
import type { FinishedPiece } from '../../../engine/render/finished-piece.ts';
import type { Ink } from '../../../engine/render/ink.ts';
import { movedPiece, turnedPiece, turnToGrain } from '../../../engine/render/place.ts';
import { uniform } from '../../uniform.ts';
import { smallCutLines, smallGarment } from './small-garment.ts';

const pieces = finishedPieces(smallGarment, smallCutLines, 'slit');

/** The ends of everything that is drawn of a piece. */
const drawnEnds = (piece: FinishedPiece, to: Transform = (p) => p) =>
  drawing({ ...piece, lettering: [] }).flatMap((ink: Ink) => {
    if (ink.kind === 'circle') return [to(ink.middle)];
    const curves: readonly Curve[] = ink.kind === 'chain' ? ink.curves : [];
    return curves.flatMap((curve) => [transformedCurve(curve, to).from, transformedCurve(curve, to).to]);
  });

function expectSame(found: ReturnType<typeof drawnEnds>, wanted: ReturnType<typeof drawnEnds>) {
  expect(found).toHaveLength(wanted.length);
  for (const [i, p] of found.entries()) expect(distance(p, wanted[i] ?? point(NaN, NaN))).toBeLessThan(1e-9);
}

describe('a piece', () => {
  test('turned is drawn as its drawing turned: buttonholes, notches and all', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pieces), uniform(-7, 7), (piece, turn) => {
        expectSame(drawnEnds(turnedPiece(piece, turn)), drawnEnds(piece, turnedBy(point(0, 0), turn)));
      }),
      { numRuns: 30 },
    );
  });

  test('moved is drawn as its drawing moved', () => {
    for (const piece of pieces)
      expectSame(
        drawnEnds(movedPiece(piece, point(3, 4), point(-20, 70))),
        drawnEnds(piece, movedBy({ x: -23, y: 66 })),
      );
  });

  test('stands upright on its grain by the shorter way round', () => {
    const [piece] = smallGarment.pieces;
    if (!piece) throw new Error('no such piece');
    fc.assert(
      fc.property(uniform(-7, 7), (angle) => {
        const grain = { from: point(5, 5), to: point(5 + 90 * Math.cos(angle), 5 + 90 * Math.sin(angle)) };
        const turn = turnToGrain({ ...piece, grain });
        const to = turnedBy(point(0, 0), turn);
        expect(to(grain.from).x).toBeCloseTo(to(grain.to).x, 6);
        expect(Math.abs(turn)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9);
      }),
    );
  });
});
