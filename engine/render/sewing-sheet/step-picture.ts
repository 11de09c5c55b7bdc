import { placeOfRow } from '../../checks/sewing/complete.ts';
import type { Curve } from '../../geometry/curve.ts';
import { edgeLength, pointAlong } from '../../geometry/edge.ts';
import { moved, type Point, point, vectorBetween } from '../../geometry/point.ts';
import { movedBy, scaledFrom, transformedCurve } from '../../geometry/transform.ts';
import { heading, outward, scaled } from '../../geometry/vector.ts';
import type { EdgeRef } from '../../pattern/garment.ts';
import type { SewingStep } from '../../pattern/sewing.ts';
import { boxOf, type FinishedPiece } from '../finished-piece.ts';
import { type Size, standInRows } from '../layout.ts';
import { textWidth } from '../text-size.ts';
import type { Picture, PictureLine, PictureWord } from './picture.ts';
import type { StepFacts } from './step-facts.ts';

/** White round each piece, room for its name below it, and the size of that name, mm. */
const gap = 2.5;
const nameRoom = 4;
const nameSize = 2.6;

/** Distance of a letter from the edge it stands at, mm. */
const letterInset = 3;

/** No piece is drawn larger than this share of its size, nor any step larger than the room it has. */
const largest = 0.32;

/** Draws the pieces a step has in hand side by side within `room`: what is worked on heavy, all else light. */
export function stepPicture(
  step: SewingStep,
  facts: StepFacts,
  pieces: readonly FinishedPiece[],
  room: Size,
): Picture | undefined {
  const shown = pieces.filter(({ piece }) => facts.pieces.includes(piece.name));
  if (shown.length === 0) return undefined;
  const { scale, corners, paper } = arranged(shown, room);
  const drawn = shown.map((finished, i) => {
    const box = boxOf(finished);
    const cell = cellOf(finished, scale);
    const corner = corners[i] ?? point(0, 0);
    const to = moved(corner, { x: (cell.width - box.width * scale) / 2, y: 0 });
    const move = movedBy(vectorBetween(scaledFrom(point(0, 0), scale)(box.corner), to));
    const place = (p: Point): Point => move(scaledFrom(point(0, 0), scale)(p));
    const placed = (curves: readonly Curve[]) => curves.map((curve) => transformedCurve(curve, place));
    return {
      lines: linesOf(step, facts, finished).map((line) => ({ ...line, curves: placed(line.curves) })),
      words: [
        nameBelow(finished, point(corner.x + cell.width / 2, corner.y + cell.height - 1)),
        ...letters(facts, finished, place),
      ],
    };
  });
  return {
    width: paper.width,
    height: paper.height,
    lines: drawn.flatMap(({ lines }) => lines),
    words: drawn.flatMap(({ words }) => words),
  };
}

/** The largest scale at which the pieces stand in the room, found by making them smaller step by step. */
function arranged(shown: readonly FinishedPiece[], room: Size) {
  for (let scale = largest; ; scale *= 0.96) {
    const cells = shown.map((finished) => cellOf(finished, scale));
    const { corners, paper } = standInRows(cells, room.width, gap);
    if ((paper.width <= room.width && paper.height <= room.height) || scale < 0.01)
      return { scale, corners, paper };
  }
}

function cellOf(finished: FinishedPiece, scale: number): Size {
  const box = boxOf(finished);
  const name = textWidth(nameOf(finished), nameSize);
  return { width: Math.max(box.width * scale, name), height: box.height * scale + nameRoom };
}

const nameOf = ({ piece }: FinishedPiece): string => `${piece.number} ${piece.name}`;

const nameBelow = (finished: FinishedPiece, at: Point): PictureWord => ({
  kind: 'name',
  text: nameOf(finished),
  at,
});

function linesOf(step: SewingStep, facts: StepFacts, finished: FinishedPiece): readonly PictureLine[] {
  const { piece, cut, notches } = finished;
  const isOn = ({ piece: name }: { readonly piece: string }): boolean => name === piece.name;
  const states = (step.brings ?? []).filter(isOn);
  const is = (condition: string): boolean => states.some((state) => state.is === condition);
  const places = states.flatMap(({ is: done, at }) =>
    at === undefined || done === 'buttonholes made' ? [] : [at],
  );
  const sewn = [...facts.seams.flatMap(({ seam }) => [...seam.a, ...seam.b]), ...(step.turns ?? [])].filter(
    isOn,
  );
  const rows = piece.lines.filter(({ kind }) => kind === 'gathering').map(({ name }) => placeOfRow(name));
  const heavyEdge = (name: string): boolean =>
    sewn.some(({ edge }) => edge === name) || (places.includes(name) && !rows.includes(name));
  const weight = (heavy: boolean, light: PictureLine['weight']) => (heavy ? 'heavy' : light);
  return [
    { weight: weight(is('cut'), 'cut'), curves: cut, closed: true },
    ...piece.edges.map(
      (edge): PictureLine => ({ weight: weight(heavyEdge(edge.name), 'stitch'), curves: edge.curves }),
    ),
    ...piece.lines.flatMap((line): PictureLine[] => {
      if (line.kind === 'level' || line.kind === 'slash') return [];
      const heavy = places.includes(line.name) || places.includes(placeOfRow(line.name));
      return [{ weight: weight(heavy || is('marked'), 'inside'), curves: line.curves }];
    }),
    ...notches.flatMap(({ strokes }) =>
      strokes.map((curves): PictureLine => ({ weight: weight(is('marked'), 'notch'), curves })),
    ),
    ...piece.marks.flatMap((mark): PictureLine[] => {
      if (mark.kind !== 'buttonhole') return [];
      const half = scaled(heading(mark.angle), mark.length / 2);
      const ends = { from: moved(mark.at, scaled(half, -1)), to: moved(mark.at, half) };
      const heavy = is('buttonholes made') || is('marked');
      return [{ weight: weight(heavy, 'notch'), curves: [{ kind: 'line', ...ends }] }];
    }),
  ];
}

/** Each seam's letter inside both of its sides, at the middle of each edge. */
const letters = (
  { seams }: StepFacts,
  { piece }: FinishedPiece,
  place: (p: Point) => Point,
): readonly PictureWord[] =>
  seams.flatMap(({ letter, seam }) =>
    [...seam.a, ...seam.b].filter(firstOfItsEdge).flatMap((ref): PictureWord[] => {
      const edge = piece.edges.find(({ name }) => ref.piece === piece.name && name === ref.edge);
      if (!edge) return [];
      const { point: middle, direction } = pointAlong(edge, edgeLength(edge) / 2);
      const inside = moved(place(middle), scaled(outward(direction), -letterInset));
      return [{ kind: 'letter', text: letter, at: moved(inside, { x: 0, y: 1 }) }];
    }),
  );

/** An edge on a fold is sewn left and right, and named twice. */
const firstOfItsEdge = (ref: EdgeRef, i: number, all: readonly EdgeRef[]): boolean =>
  all.findIndex(({ piece, edge }) => piece === ref.piece && edge === ref.edge) === i;
