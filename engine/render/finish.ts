import { type NotchType, notchStrokes } from '../finishing/notches.ts';
import type { Edge } from '../geometry/curve.ts';
import type { Garment } from '../pattern/garment.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { turnedPiece, turnToGrain } from './place.ts';
import type { PrintOptions } from './print-options.ts';

/**
 * The pieces of a garment with their cutting lines and notches, each turned upright on its grain; not lettered yet.
 * `earlier` holds outlines to draw under pieces, by name.
 */
export const finishedPieces = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  notches: NotchType,
  earlier: PrintOptions['earlier'] = new Map(),
): readonly FinishedPiece[] =>
  garment.pieces.map((piece) => {
    const cut = cutLines.get(piece.name)?.curves ?? [];
    const before = earlier.get(piece.name);
    const finished = {
      piece,
      cut,
      notches: notchStrokes(piece, notches),
      lettering: [],
      ...(before && { earlier: before }),
    };
    return turnedPiece(finished, turnToGrain(piece));
  });
