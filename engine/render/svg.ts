import type { NotchType } from '../finishing/notches.ts';
import type { Edge } from '../geometry/curve.ts';
import { point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { drawing } from './drawing.ts';
import { finishedPieces } from './finish.ts';
import { boxOf, type FinishedPiece } from './finished-piece.ts';
import { lettered } from './lettering.ts';
import { metadataOf } from './metadata.ts';
import { paper } from './paper.ts';
import { movedPiece } from './place.ts';
import { svgInk, svgPiece } from './svg-ink.ts';
import { testSquares, testSquaresSize } from './test-squares.ts';

/** What the caller wants printed besides the garment itself. */
export interface PrintOptions {
  /** Printed as given; the engine has no clock. */
  readonly date?: string | undefined;
  /** How notches are drawn; slits unless said otherwise. */
  readonly notches?: NotchType;
}

/** White around the drawing and between its parts, mm. */
const margin = 10;

/** One piece on a paper of its own, upright on its grain, with its test squares below; a whole SVG file, 1:1. */
function pieceSvg(garment: Garment, plain: FinishedPiece, { date }: PrintOptions): string {
  const finished = lettered(plain, garment, date);
  const { piece } = finished;
  const box = boxOf(finished);
  const placed = movedPiece(finished, box.corner, point(margin, margin));
  const size = {
    width: Math.max(box.width, testSquaresSize.width) + 2 * margin,
    height: box.height + testSquaresSize.height + 3 * margin,
  };
  const title = `${garment.name}: ${piece.number} ${piece.name}`;
  return paper(title, size, metadataOf(garment, [piece], 'piece', date), [
    svgPiece(piece.name, drawing(placed)),
    ...testSquares(point(margin, box.height + 2 * margin)).map(svgInk),
  ]);
}

/** One SVG file a piece: its name and its text. `cutLines` holds the cutting lines by piece name. */
export const pieceSvgs = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions = {},
): ReadonlyMap<string, string> =>
  new Map(
    finishedPieces(garment, cutLines, options.notches ?? 'slit').map((finished) => [
      fileNameOf(finished.piece),
      pieceSvg(garment, finished, options),
    ]),
  );

/** The name of a piece's file: its number and its name in small letters, such as `2-side-front.svg`. */
export const fileNameOf = (piece: Piece): string =>
  `${[piece.number, piece.name]
    .join('-')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')}.svg`;
