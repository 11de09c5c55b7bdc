import type { Stroke } from '../../finishing/chords.ts';
import { strokes } from '../../finishing/label.ts';
import type { Curve, Edge } from '../../geometry/curve.ts';
import { signedArea } from '../../geometry/outline.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { Garment } from '../../pattern/garment.ts';
import { drawing } from '../drawing.ts';
import { finishedPieces } from '../finish.ts';
import { boxOf, type FinishedPiece, lineAround } from '../finished-piece.ts';
import type { Size } from '../layout.ts';
import { movedPiece, turnedPiece } from '../place.ts';
import type { PrintOptions } from '../svg.ts';
import { type BoundedInk, bounded } from './ink-bounds.ts';
import { placeShapes, type Shape } from './place-shapes.ts';

/** All pieces of a garment on one sheet that pages are joined to. */
export interface Spread {
  readonly pieces: readonly FinishedPiece[];
  readonly drawn: readonly BoundedInk[];
  /** Top left corners of the blocks that were to stand beside the pieces. */
  readonly blocks: readonly Point[];
  readonly columns: number;
  readonly rows: number;
}

/** What the pieces are spread on. */
export interface Field {
  /** One page's share of the joined sheet, mm. */
  readonly cell: Size;
  readonly columns: number;
  readonly rows: number;
}

/**
 * Spreads the pieces of a garment over joined pages, each upright on its grain or upside down, and with them
 * `blocks` of other things. Undefined when there is no room.
 */
export function spread(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  options: PrintOptions,
  field: Field,
  blocks: readonly Size[],
): Spread | undefined {
  const ways = finishedPieces(garment, cutLines, options.notches ?? 'slit').map((finished) =>
    [finished, turnedPiece(finished, Math.PI)].map(toOrigin),
  );
  const shapes = [
    ...ways.map((pieces): Shape => ({ outlines: pieces.map(outlineOf) })),
    ...blocks.map((block): Shape => ({ outlines: [rectangle(block)] })),
  ];
  const placing = placeShapes(shapes, field.cell, field);
  if (!placing) return undefined;
  const { places, columns, rows } = placing;
  const pieces = ways.flatMap((both, i) => {
    const place = places[i];
    const piece = place && both[place.way];
    return piece ? [movedPiece(piece, point(0, 0), place.corner)] : [];
  });
  const drawn = bounded(pieces.flatMap((piece) => drawing(piece, garment, options.date)));
  return { pieces, drawn, blocks: places.slice(ways.length).map(({ corner }) => corner), columns, rows };
}

/** The fewest pages of this size that could take the pieces if paper had no shape, only area. */
export const pagesByArea = (pieces: readonly FinishedPiece[], { width, height }: Size): number =>
  Math.ceil(
    pieces.reduce(
      (sum, piece) => sum + Math.abs(signedArea([{ name: 'around', curves: lineAround(piece) }])),
      0,
    ) /
      (width * height),
  );

const toOrigin = (piece: FinishedPiece): FinishedPiece => movedPiece(piece, boxOf(piece).corner, point(0, 0));

/** The cutting line, with a detour out to the tip of each notch that stands beyond it. */
const outlineOf = (finished: FinishedPiece): readonly Stroke[] => [
  ...lineAround(finished).flatMap(strokes),
  ...finished.notches.flatMap(({ strokes: drawn }) =>
    drawn.flat().flatMap((curve) => [...strokes(curve), ...strokes(backwards(curve))]),
  ),
];

const backwards = ({ from, to }: Curve): Curve => ({ kind: 'line', from: to, to: from });

function rectangle({ width, height }: Size): readonly Stroke[] {
  const corners = [point(0, 0), point(width, 0), point(width, height), point(0, height)];
  return corners.map((from, i) => ({ from, to: corners[(i + 1) % 4] ?? from }));
}
