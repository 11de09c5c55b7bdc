import { boundingBox } from '../../geometry/bounds.ts';
import { edgeLength, pointAlong } from '../../geometry/edge.ts';
import { moved, type Point, point } from '../../geometry/point.ts';
import { type Transform, transformedCurve } from '../../geometry/transform.ts';
import { outward, scaled } from '../../geometry/vector.ts';
import type { EdgeRef } from '../../pattern/seam.ts';
import type { SewingStep } from '../../pattern/sewing.ts';
import { nameSize, type Picture, type PictureLine, type PictureWord } from '../booklet/picture.ts';
import { inRows } from '../booklet/rows.ts';
import type { FinishedPiece } from '../finished-piece.ts';
import type { Size } from '../layout.ts';
import { textWidth } from '../text-size.ts';
import { type PieceLines, pieceLines } from './piece-lines.ts';
import type { StepFacts } from './step-facts.ts';

/** White between pieces, and room for a name below each, mm. */
const gap = 4;
const nameRoom = 4;

/** Distance of a letter from the edge it stands at, mm. */
const letterInset = 3;

/** No piece is drawn larger than this share of its size, nor any step larger than the room it has. */
const largest = 0.155;

/** A piece as drawn in one step. */
interface Shown extends PieceLines {
  readonly finished: FinishedPiece;
  readonly corner: Point;
  readonly size: Size;
}

/**
 * Draws the pieces that a step has in hand side by side within `room`: what is worked on heavy, all else light.
 * `folded` holds the pieces that stay double on their fold; others that are cut on a fold are drawn opened out.
 */
export function stepPicture(
  step: SewingStep,
  facts: StepFacts,
  pieces: readonly FinishedPiece[],
  folded: ReadonlySet<string>,
  room: Size,
): Picture | undefined {
  const shown = pieces
    .filter(({ piece }) => facts.pieces.includes(piece.name))
    .map((finished): Shown => {
      const drawn = pieceLines(step, facts, finished, folded);
      const box = boundingBox(drawn.lines.flatMap(({ curves }) => curves));
      const size = { width: box.right - box.left, height: box.bottom - box.top };
      return { ...drawn, finished, corner: point(box.left, box.top), size };
    });
  if (shown.length === 0) return undefined;
  const { scale, cells, rows } = arranged(shown, room);
  const drawn = shown.map((piece, i) => {
    const cell = cells[i] ?? piece.size;
    const corner = rows.corners[i] ?? point(0, 0);
    const left = corner.x + (cell.width - piece.size.width * scale) / 2;
    const place: Transform = (p) =>
      point(left + (p.x - piece.corner.x) * scale, corner.y + (p.y - piece.corner.y) * scale);
    const name: PictureWord = {
      kind: 'name',
      text: nameOf(piece.finished),
      at: point(corner.x + cell.width / 2, corner.y + piece.size.height * scale + nameRoom - 1),
    };
    return {
      lines: piece.lines.map(
        (line): PictureLine => ({
          ...line,
          curves: line.curves.map((curve) => transformedCurve(curve, place)),
        }),
      ),
      words: [name, ...letters(facts, piece, place)],
    };
  });
  return {
    width: rows.width,
    height: rows.height,
    lines: drawn.flatMap(({ lines }) => lines),
    words: drawn.flatMap(({ words }) => words),
  };
}

/** The largest scale at which the pieces stand in the room, found by making them smaller step by step. */
function arranged(shown: readonly Shown[], room: Size) {
  for (let scale = largest; ; scale *= 0.96) {
    const cells = shown.map(({ finished, size }) => ({
      width: Math.max(size.width * scale, textWidth(nameOf(finished), nameSize)),
      height: size.height * scale + nameRoom,
    }));
    const rows = inRows(cells, room.width, gap);
    if ((rows.width <= room.width && rows.height <= room.height) || scale < 0.01)
      return { scale, cells, rows };
  }
}

const nameOf = ({ piece }: FinishedPiece): string => `${piece.number} ${piece.name}`;

/** Letters of several seams stand at different places, so that they do not meet in a narrow piece. */
const letterPlace = (seam: number): number => [0.5, 0.4, 0.6][seam % 3] ?? 0.5;

/** At each edge that is sewn, the letters of its seams, inside and near its middle. */
const letters = (
  { seams }: StepFacts,
  { finished: { piece }, opened }: Shown,
  place: Transform,
): readonly PictureWord[] =>
  piece.edges.flatMap((edge): PictureWord[] => {
    const isHere = (ref: EdgeRef): boolean => ref.piece === piece.name && ref.edge === edge.name;
    const here = seams.filter(({ seam }) => [...seam.a, ...seam.b].some(isHere));
    const [first] = here;
    if (!first) return [];
    const along = edgeLength(edge) * letterPlace(seams.indexOf(first));
    const { point: middle, direction } = pointAlong(edge, along);
    const away = scaled(outward(direction), -letterInset);
    const word = (at: Point, across: 1 | -1): PictureWord => ({
      kind: 'letter',
      text: here.map(({ letter }) => letter).join(' '),
      at: moved(place(at), { x: across * away.x, y: away.y + 1 }),
    });
    return [word(middle, 1), ...(opened ? [word(opened(middle), -1)] : [])];
  });
