import type { Edge } from '../geometry/curve.ts';
import { point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { drawing } from './drawing.ts';
import { boxOf, type FinishedPiece } from './finished-piece.ts';
import { letteredPieces } from './lettering.ts';
import { styleSheet } from './line-types.ts';
import { metadataOf } from './metadata.ts';
import { paper } from './paper.ts';
import { movedPiece } from './place.ts';
import type { PrintOptions } from './print-options.ts';
import { svgInk, svgPiece } from './svg-ink.ts';
import { testSquares, testSquaresSize } from './test-squares.ts';

/** White around the drawing and between its parts, mm. */
const margin = 10;

/**
 * One piece on a paper of its own, upright on its grain, with its test squares below; a whole SVG file, 1:1. It has no
 * key, and so shows nothing of an earlier draft.
 */
function pieceSvg(garment: Garment, lettered: FinishedPiece, options: PrintOptions): string {
  const { earlier: _, ...finished } = lettered;
  const { piece } = finished;
  const box = boxOf(finished);
  const placed = movedPiece(finished, box.corner, point(margin, margin));
  const size = {
    width: Math.max(box.width, testSquaresSize.width) + 2 * margin,
    height: box.height + testSquaresSize.height + 3 * margin,
  };
  const title = `${garment.name}: ${piece.number} ${piece.name}`;
  const content = [
    svgPiece(piece.name, drawing(placed)),
    ...testSquares(point(margin, box.height + 2 * margin)).map(svgInk),
  ];
  return paper(title, size, metadataOf(garment, [piece], 'piece', options), content, styleSheet);
}

/** One SVG file a piece: its name and its text. */
export const svgsOf = (
  garment: Garment,
  pieces: readonly FinishedPiece[],
  options: PrintOptions,
): ReadonlyMap<string, string> =>
  new Map(pieces.map((finished) => [fileNameOf(finished.piece), pieceSvg(garment, finished, options)]));

/** The same from the cutting lines, by piece name. */
export const pieceSvgs = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions = {},
): ReadonlyMap<string, string> => svgsOf(garment, letteredPieces(garment, cutLines, options), options);

/** The name of a piece's file: its number and its name in small letters, such as `2-side-front.svg`. */
export const fileNameOf = (piece: Pick<Piece, 'name' | 'number'>): string =>
  `${[piece.number, piece.name]
    .join('-')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')}.svg`;
