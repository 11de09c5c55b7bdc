import type { Stroke } from '../../finishing/chords.ts';
import { strokes } from '../../finishing/label.ts';
import { boundsAbout } from '../../geometry/bounds.ts';
import type { Curve, Edge } from '../../geometry/curve.ts';
import { signedArea } from '../../geometry/outline.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { Garment } from '../../pattern/garment.ts';
import { drawing } from '../drawing.ts';
import { finishedPieces } from '../finish.ts';
import { boxOf, type FinishedPiece, lineAround } from '../finished-piece.ts';
import { type BoundedInk, bounded, inkBounds } from '../ink-bounds.ts';
import type { Size } from '../layout.ts';
import { lettered } from '../lettering.ts';
import { movedPiece, turnedPiece } from '../place.ts';
import type { PrintOptions } from '../print-options.ts';
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
  const lettering = (finished: FinishedPiece, joints: readonly Curve[] = []): FinishedPiece =>
    lettered(finished, garment, options, joints);
  const ways = finishedPieces(garment, cutLines, options.notches ?? 'slit').map((finished) =>
    [finished, turnedPiece(finished, Math.PI)].map((way) => toOrigin(lettering(way))),
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
    return piece ? [offJoints(movedPiece(piece, point(0, 0), place.corner), field, lettering)] : [];
  });
  const drawn = bounded(pieces.flatMap(drawing));
  return { pieces, drawn, blocks: places.slice(ways.length).map(({ corner }) => corner), columns, rows };
}

/** Words keep this share of their size clear of a joint: more than half of what lies between two rows of a label. */
const CLEAR = 0.25;

/** A placed piece, lettered again where its words, or the rows of its label, would be cut apart between two pages. */
function offJoints(
  piece: FinishedPiece,
  { cell }: Field,
  letter: (finished: FinishedPiece, joints: readonly Curve[]) => FinishedPiece,
): FinishedPiece {
  const apart = (from: number, to: number, clear: number, size: number): boolean =>
    Math.floor((from - clear) / size) !== Math.floor((to + clear) / size);
  const isCut = piece.lettering.some((ink) => {
    if (ink.kind !== 'words') return false;
    const { left, right, top, bottom } = inkBounds(ink);
    const clear = CLEAR * ink.size;
    return apart(left, right, clear, cell.width) || apart(top, bottom, clear, cell.height);
  });
  return isCut ? letter(piece, jointsUnder(piece, cell)) : piece;
}

/** The lines between pages under a piece. */
function jointsUnder(piece: FinishedPiece, { width, height }: Size): readonly Curve[] {
  const { corner, ...size } = boxOf({ ...piece, lettering: [] });
  const [right, bottom] = [corner.x + size.width, corner.y + size.height];
  const between = (from: number, to: number, step: number): readonly number[] =>
    Array.from(
      { length: Math.max(0, Math.floor(to / step) - Math.floor(from / step)) },
      (_, i) => (Math.floor(from / step) + 1 + i) * step,
    );
  return [
    ...between(corner.x, right, width).map((x) => joint(point(x, corner.y), point(x, bottom))),
    ...between(corner.y, bottom, height).map((y) => joint(point(corner.x, y), point(right, y))),
  ];
}

const joint = (from: Point, to: Point): Curve => ({ kind: 'line', from, to });

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
  ...besideOf(finished),
];

/** The box about words beside a piece; nothing where all stand on it. */
function besideOf(finished: FinishedPiece): readonly Stroke[] {
  const { corner, width } = boxOf({ ...finished, lettering: [] });
  const beside = finished.lettering.map(inkBounds).filter(({ left }) => left > corner.x + width);
  if (beside.length === 0) return [];
  const { left, right, top, bottom } = boundsAbout(beside);
  return rectangle({ width: right - left, height: bottom - top }, point(left, top));
}

const backwards = ({ from, to }: Curve): Curve => ({ kind: 'line', from: to, to: from });

function rectangle({ width, height }: Size, { x, y }: Point = point(0, 0)): readonly Stroke[] {
  const corners = [point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)];
  return corners.map((from, i) => ({ from, to: corners[(i + 1) % 4] ?? from }));
}
