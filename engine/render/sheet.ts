import type { Edge } from '../geometry/curve.ts';
import { point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import { drawing } from './drawing.ts';
import { finishedPieces } from './finish.ts';
import { boxOf } from './finished-piece.ts';
import { keySize, lineKey } from './key.ts';
import { standInRows } from './layout.ts';
import { lettered } from './lettering.ts';
import { metadataOf } from './metadata.ts';
import { paper } from './paper.ts';
import { movedPiece } from './place.ts';
import type { PrintOptions } from './svg.ts';
import { svgInk, svgPiece } from './svg-ink.ts';
import { testSquares, testSquaresSize } from './test-squares.ts';

/** White between neighbours and at the paper's edge, mm. */
const gap = 20;

/** Width of the paper when no piece asks for more, mm: a 36 in plotter roll. */
const rollWidth = 914;

/** All pieces on one paper, side by side and upright on their grain, with test squares and key; SVG, 1:1.
 * `cutLines` holds the cutting lines by piece name. */
export function sheetSvg(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions = {},
): string {
  const pieces = finishedPieces(garment, cutLines, options.notches ?? 'slit').map((finished) =>
    lettered(finished, garment, options.date),
  );
  const boxes = pieces.map(boxOf);
  const sizes = [...boxes, testSquaresSize, keySize];
  const { corners, paper: size } = standInRows(sizes, rollWidth, gap);
  const cornerOf = (index: number) => corners[index] ?? point(gap, gap);
  const drawn = pieces.map((finished, index) => {
    const corner = boxes[index]?.corner ?? point(0, 0);
    const placed = movedPiece(finished, corner, cornerOf(index));
    return svgPiece(finished.piece.name, drawing(placed));
  });
  const title = `${garment.name} for ${garment.body}`;
  return paper(title, size, metadataOf(garment, garment.pieces, 'sheet', options.date), [
    ...drawn,
    ...testSquares(cornerOf(drawn.length)).map(svgInk),
    ...lineKey(cornerOf(drawn.length + 1)).map(svgInk),
  ]);
}
