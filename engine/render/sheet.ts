import type { Edge } from '../geometry/curve.ts';
import { point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import { drawing } from './drawing.ts';
import { boxOf, type FinishedPiece } from './finished-piece.ts';
import { keySize, lineKey } from './key.ts';
import { standInRows } from './layout.ts';
import { letteredPieces } from './lettering.ts';
import { earlierStyleSheet, styleSheet } from './line-types.ts';
import { metadataOf } from './metadata.ts';
import { paper } from './paper.ts';
import { movedPiece } from './place.ts';
import type { PrintOptions } from './print-options.ts';
import { svgInk, svgPiece } from './svg-ink.ts';
import { testSquares, testSquaresSize } from './test-squares.ts';

/** White between neighbours and at the paper's edge, mm. */
const gap = 20;

/** Width of the paper when no piece asks for more, mm: a 36 in plotter roll. */
const rollWidth = 914;

/** All pieces on one paper, side by side and upright on their grain, with test squares and key; SVG, 1:1. */
export function sheetOf(garment: Garment, pieces: readonly FinishedPiece[], options: PrintOptions): string {
  const boxes = pieces.map(boxOf);
  const earlier = pieces.some((piece) => piece.earlier !== undefined);
  const sizes = [...boxes, testSquaresSize, keySize(earlier)];
  const { corners, paper: size } = standInRows(sizes, rollWidth, gap);
  const cornerOf = (index: number) => corners[index] ?? point(gap, gap);
  const drawn = pieces.map((finished, index) => {
    const corner = boxes[index]?.corner ?? point(0, 0);
    const placed = movedPiece(finished, corner, cornerOf(index));
    return svgPiece(finished.piece.name, drawing(placed));
  });
  const title = `${garment.name} for ${garment.body}`;
  const content = [
    ...drawn,
    ...testSquares(cornerOf(drawn.length)).map(svgInk),
    ...lineKey(cornerOf(drawn.length + 1), earlier).map(svgInk),
  ];
  const metadata = metadataOf(garment, garment.pieces, 'sheet', options);
  return paper(title, size, metadata, content, earlier ? earlierStyleSheet : styleSheet);
}

/** The same from the cutting lines, by piece name. */
export const sheetSvg = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions = {},
): string => sheetOf(garment, letteredPieces(garment, cutLines, options), options);
