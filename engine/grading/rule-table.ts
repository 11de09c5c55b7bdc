import { type Point, vectorBetween } from '../geometry/point.ts';
import type { Vector } from '../geometry/vector.ts';
import type { Axis } from './chart.ts';
import type { GradedSize, LaidSize } from './laid-size.ts';

/** What one axis of a chart does to every piece: the grade rule table of the trade, read off drafted sizes. */
export interface AxisGrade {
  readonly along: Axis['along'];
  readonly at: string;
  /** The names along the axis. */
  readonly names: readonly string[];
  readonly pieces: readonly PieceGrade[];
}

export interface PieceGrade {
  readonly piece: string;
  readonly number: number;
  /** The place that lies at 0, 0 in all sizes. */
  readonly anchor: string;
  readonly edges: readonly EdgeGrade[];
  readonly points: readonly PointGrade[];
}

/** An edge through the sizes, mm. */
export interface EdgeGrade {
  readonly edge: string;
  readonly lengths: readonly number[];
  /** From each size to the next. */
  readonly steps: readonly number[];
}

/** A corner, or a notch on its edge, through the sizes: x to the wearer's side, y down the grain, mm. */
export interface PointGrade {
  readonly kind: 'corner' | 'notch';
  readonly point: string;
  readonly places: readonly Point[];
  readonly steps: readonly Vector[];
}

/** The grade along an axis, of what all its sizes have; what only some have is named by `unlikeSizes`. */
export function axisGrade({ along, at, rows }: Axis, sizes: readonly GradedSize[]): AxisGrade {
  const [first] = sizes;
  const pieces = first ? [...first.pieces.keys()] : [];
  return {
    along,
    at,
    names: rows.map((row) => (along === 'sizes' ? row.size : row.cup)),
    pieces: pieces.flatMap((name) => pieceGrade(name, sizes)),
  };
}

function pieceGrade(name: string, sizes: readonly GradedSize[]): readonly PieceGrade[] {
  const laid = sizes.flatMap(({ pieces }) => pieces.get(name) ?? []);
  const [first] = laid;
  if (!first || laid.length < sizes.length) return [];
  const edges: EdgeGrade[] = [];
  for (const edge of first.lengths.keys()) {
    const lengths = inAll(laid, (size) => size.lengths.get(edge));
    if (lengths) edges.push({ edge, lengths, steps: differences(lengths) });
  }
  const points: PointGrade[] = [];
  for (const [point, { kind }] of first.points) {
    const places = inAll(laid, (size) => size.points.get(point)?.at);
    if (places) points.push({ kind, point, places, steps: moves(places) });
  }
  return [{ piece: name, number: first.finished.piece.number, anchor: first.anchor, edges, points }];
}

/** What all sizes have, each its own; undefined where one has it not. */
function inAll<T>(
  sizes: readonly LaidSize[],
  found: (size: LaidSize) => T | undefined,
): readonly T[] | undefined {
  const all: T[] = [];
  for (const size of sizes) {
    const one = found(size);
    if (one === undefined) return undefined;
    all.push(one);
  }
  return all;
}

const differences = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, i) => value - (values[i] ?? value));

const moves = (places: readonly Point[]): readonly Vector[] =>
  places.slice(1).map((place, i) => vectorBetween(places[i] ?? place, place));
