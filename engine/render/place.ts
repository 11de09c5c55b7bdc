import { type Point, point, vectorBetween } from '../geometry/point.ts';
import { NO_TURN } from '../geometry/tolerance.ts';
import {
  movedBy,
  type Transform,
  transformedCurve,
  transformedEdge,
  turnedBy,
} from '../geometry/transform.ts';
import { angleOf } from '../geometry/vector.ts';
import type { Piece } from '../pattern/piece.ts';
import type { FinishedPiece } from './finished-piece.ts';
import { movedInk } from './ink.ts';

/**
 * A finished piece turned about the origin by `turn` (radians, clockwise as drawn). Its words would no longer stand
 * upright: it is to be lettered again.
 */
export const turnedPiece = (finished: FinishedPiece, turn: number): FinishedPiece =>
  turn === 0 ? finished : { ...placed(finished, turnedBy(point(0, 0), turn), turn), lettering: [] };

/** A finished piece moved so that what lies at `from` comes to lie at `to`. */
export function movedPiece(finished: FinishedPiece, from: Point, to: Point): FinishedPiece {
  const move = movedBy(vectorBetween(from, to));
  return { ...placed(finished, move, 0), lettering: finished.lettering.map((ink) => movedInk(ink, move)) };
}

function placed(
  { piece, cut, notches, earlier }: FinishedPiece,
  to: Transform,
  turn: number,
): Omit<FinishedPiece, 'lettering'> {
  return {
    piece: {
      ...piece,
      edges: piece.edges.map((edge) => transformedEdge(edge, to)),
      grain: { from: to(piece.grain.from), to: to(piece.grain.to) },
      lines: piece.lines.map((line) => transformedEdge(line, to)),
      marks: piece.marks.map((mark) => ({ ...mark, at: to(mark.at), angle: mark.angle + turn })),
    },
    cut: cut.map((curve) => transformedCurve(curve, to)),
    notches: notches.map(({ notch, strokes }) => ({
      notch,
      strokes: strokes.map((curves) => curves.map((curve) => transformedCurve(curve, to))),
    })),
    ...(earlier && {
      earlier: earlier.map((curves) => curves.map((curve) => transformedCurve(curve, to))),
    }),
  };
}

/**
 * The turn that sets a piece upright on its grain (radians), by the shorter way round, so that what is drawn
 * upright stays as it is.
 */
export function turnToGrain({ grain }: Piece): number {
  const down = Math.PI / 2 - angleOf(vectorBetween(grain.from, grain.to));
  const turn = down - Math.PI * Math.round(down / Math.PI);
  return Math.abs(turn) < NO_TURN ? 0 : turn;
}
