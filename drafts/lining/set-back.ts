import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  pointAlong,
  splitEdgeAt,
  startDirection,
} from '../../engine/geometry/edge.ts';
import { type EndMove, withEndsMoved } from '../../engine/geometry/ends-moved.ts';
import { directionAt } from '../../engine/geometry/evaluate.ts';
import { vectorBetween } from '../../engine/geometry/point.ts';
import { cross, dot, outward, plus, scaled, type Vector } from '../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../engine/pattern/piece.ts';

/** Which edges of an outline are set back, and by how much. */
export interface SetBack {
  readonly isSet: (edge: PieceEdge) => boolean;
  /** mm */
  readonly by: number;
  /** How far the corner with an edge that stays slides along it, where that is not as far: mm. */
  readonly slides?: (stays: PieceEdge) => number;
}

/**
 * Sets edges of an outline back into the cloth. A corner with an edge that stays slides along it, so that it is cut
 * short there and still lies on its line; a corner between two edges that are set back moves in from both. What is set
 * back keeps its angles at its corners, so that its lines run on over every seam over which they did before.
 */
export function setBack(
  edges: readonly PieceEdge[],
  { isSet, by, slides = () => by }: SetBack,
): readonly PieceEdge[] {
  return edges.map((edge, i) => {
    const before = edges.at(i - 1) ?? edge;
    const after = edges[(i + 1) % edges.length] ?? edge;
    if (!isSet(edge)) {
      const length = edgeLength(edge);
      const slide = Math.min(slides(edge), length);
      return stretch(edge, isSet(before) ? slide : 0, isSet(after) ? length - slide : length);
    }
    const start = isSet(before)
      ? inFromBoth(endDirection(before), startDirection(edge), by)
      : back(before, slides(before));
    const end = isSet(after)
      ? inFromBoth(endDirection(edge), startDirection(after), by)
      : onward(after, slides(after));
    return {
      ...edge,
      curves: edge.curves.map((curve, j) => {
        const [previous, next] = [edge.curves[j - 1], edge.curves[j + 1]];
        return withEndsMoved(
          curve,
          previous ? inFromBoth(directionAt(previous, 'end'), directionAt(curve, 'start'), by) : start,
          next ? inFromBoth(directionAt(curve, 'end'), directionAt(next, 'start'), by) : end,
        );
      }),
    };
  });
}

/** The corner between two lines with these headings, moved in from both. */
function inFromBoth(arriving: Vector, leaving: Vector, mm: number): EndMove {
  const [a, b] = [outward(arriving), outward(leaving)];
  return { by: scaled(plus(a, b), -mm / (1 + dot(a, b))), turned: 0 };
}

/** The corner at an edge's start, moved along it. */
function onward(edge: PieceEdge, mm: number): EndMove {
  const { point, direction } = pointAlong(edge, mm);
  return { by: vectorBetween(edgeStart(edge), point), turned: turn(startDirection(edge), direction) };
}

/** The corner at an edge's end, moved back along it. */
function back(edge: PieceEdge, mm: number): EndMove {
  const { point, direction } = pointAlong(edge, edgeLength(edge) - mm);
  return { by: vectorBetween(edgeEnd(edge), point), turned: turn(endDirection(edge), direction) };
}

const turn = (from: Vector, to: Vector): number => Math.atan2(cross(from, to), dot(from, to));

/** An edge without what lies before `from` mm along it, and without what lies beyond `to` mm. */
export function stretch(edge: PieceEdge, from: number, to: number): PieceEdge {
  const names = [edge.name, edge.name] as const;
  const [upTo] = to < edgeLength(edge) ? splitEdgeAt(edge, to, names) : [edge];
  const [, kept] = from > 0 ? splitEdgeAt(upTo, from, names) : [upTo, upTo];
  return { ...edge, curves: kept.curves };
}
