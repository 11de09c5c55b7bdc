import type { Evaluation } from '../evaluate.ts';
import { notchesOf } from '../finishing/notches.ts';
import { edgeLength, pointAlong } from '../geometry/edge.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import { finishedPieces } from '../render/finish.ts';
import type { FinishedPiece } from '../render/finished-piece.ts';
import { movedPiece } from '../render/place.ts';
import { anchorOf, cornersOf } from './anchor.ts';
import type { ChartSize } from './chart.ts';

/** A size of a chart, drafted, its pieces laid so that those of other sizes can be laid on them. */
export interface GradedSize {
  readonly of: ChartSize;
  readonly made: Evaluation;
  /** By name: upright on their grain, their anchors at the origin. */
  readonly pieces: ReadonlyMap<string, LaidSize>;
}

export interface LaidSize {
  /** What lies at 0, 0. */
  readonly anchor: string;
  readonly finished: FinishedPiece;
  /** By edge, mm. */
  readonly lengths: ReadonlyMap<string, number>;
  readonly points: ReadonlyMap<string, NamedPoint>;
}

/** A corner, or where a notch stands on its edge. */
export interface NamedPoint {
  readonly kind: 'corner' | 'notch';
  readonly at: Point;
}

/** Lays the pieces of a drafted size on an anchor (`anchorOf`), which comes to lie at 0, 0; the grain runs straight down. */
export function laidSize(of: ChartSize, made: Evaluation, align: string): GradedSize {
  const finished = finishedPieces(made.garment, made.cutLines, notchesOf(made.styling));
  const pieces = finished.map((upright): readonly [string, LaidSize] => {
    const { name: anchor, at } = anchorOf(upright.piece, align);
    const laid = movedPiece(upright, at, point(0, 0));
    const { piece } = laid;
    const lengths = new Map(piece.edges.map((edge) => [edge.name, edgeLength(edge)] as const));
    return [piece.name, { anchor, finished: laid, lengths, points: namedPoints(piece) }];
  });
  return { of, made, pieces: new Map(pieces) };
}

/** The corners and notches of a piece by name; of notches that share one on an edge the first has it. */
function namedPoints(piece: Piece): ReadonlyMap<string, NamedPoint> {
  const points = new Map<string, NamedPoint>();
  for (const { name, at } of cornersOf(piece)) points.set(name, { kind: 'corner', at });
  for (const notch of piece.notches) {
    const edge = piece.edges.find(({ name }) => name === notch.edge);
    const name = `${notch.edge}: ${notch.name}`;
    if (edge && !points.has(name)) points.set(name, { kind: 'notch', at: pointAlong(edge, notch.at).point });
  }
  return points;
}
