import { point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { drawing } from './drawing.ts';
import { finish } from './finish.ts';
import { boxOf } from './finished-piece.ts';
import { metadataOf } from './metadata.ts';
import { paper } from './paper.ts';
import { movedPiece, turnedPiece, turnToGrain } from './place.ts';
import { testSquares, testSquaresSize } from './test-squares.ts';

/** What the caller wants printed besides the garment itself. */
export interface PrintOptions {
  /** Printed as given; the engine has no clock. */
  readonly date?: string | undefined;
}

/** White around the drawing and between its parts, mm. */
const margin = 10;

/** One piece on a paper of its own, upright on its grain, with its test squares below; a whole SVG file, 1:1. */
export function pieceSvg(garment: Garment, piece: Piece, options: PrintOptions = {}): string {
  const upright = turnedPiece(finish(piece), turnToGrain(piece));
  const box = boxOf(upright);
  const placed = movedPiece(upright, box.corner, point(margin, margin));
  const size = {
    width: Math.max(box.width, testSquaresSize.width) + 2 * margin,
    height: box.height + testSquaresSize.height + 3 * margin,
  };
  const title = `${garment.name}: ${piece.number} ${piece.name}`;
  return paper(title, size, metadataOf(garment, [piece], 'piece', options.date), [
    drawing(placed, garment, options.date),
    ...testSquares(point(margin, box.height + 2 * margin)),
  ]);
}

/** The name of a piece's file: its number and its name in small letters, such as `2-side-front.svg`. */
export const fileNameOf = (piece: Piece): string =>
  `${[piece.number, piece.name]
    .join('-')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')}.svg`;
