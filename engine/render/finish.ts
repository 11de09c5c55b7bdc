import { cuttingLines } from '../finishing/cut-lines.ts';
import { type NotchType, notchStrokes } from '../finishing/notches.ts';
import { PARALLEL } from '../geometry/tolerance.ts';
import type { Garment } from '../pattern/garment.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { turnedPiece, turnToGrain } from './place.ts';

/** The pieces of a garment with their cutting lines and notches, each turned upright on its grain. */
export function finishedPieces(garment: Garment, notches: NotchType): readonly FinishedPiece[] {
  const cuts = cuttingLines(garment, PARALLEL);
  return garment.pieces.map((piece) => {
    const cut = cuts.get(piece.name)?.curves ?? [];
    const finished = { piece, cut, notches: notchStrokes(piece, notches) };
    return turnedPiece(finished, turnToGrain(piece));
  });
}
