import type { Curve } from '../../engine/geometry/curve.ts';
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
import { distance, vectorBetween } from '../../engine/geometry/point.ts';
import { COINCIDENCE } from '../../engine/geometry/tolerance.ts';
import { cross, dot, outward, plus, scaled, unit, type Vector } from '../../engine/geometry/vector.ts';
import type { PieceEdge } from '../../engine/pattern/piece.ts';

/** Which edges of an outline are set back, and by how much. */
export interface SetBack {
  readonly isSet: (edge: PieceEdge) => boolean;
  /** mm */
  readonly by: number;
  /** How far (mm) a corner slides along an edge that stays, where that is not as far. */
  readonly slides?: (stays: PieceEdge) => number;
  /** Whether corners are rounded, so that they can be turned under, and the centre is crossed at right angles. */
  readonly rounded?: true;
}

/** An outline with some of its edges set back into the cloth, and the others cut short where they met these. */
export function setBack(outline: readonly PieceEdge[], how: SetBack): readonly PieceEdge[] {
  const { isSet, by, slides = () => by } = how;
  return outline.map((edge, i) => {
    if (isSet(edge)) return moved(outline, i, how);
    const { before, after } = neighbours(outline, i);
    const length = edgeLength(edge);
    return stretch(edge, isSet(before) ? slides(edge) : 0, isSet(after) ? length - slides(edge) : length);
  });
}

/** Only those edges of an outline that are set back. */
export const edgesSetBack = (outline: readonly PieceEdge[], how: SetBack): readonly PieceEdge[] =>
  outline.flatMap((edge, i) => (how.isSet(edge) ? [moved(outline, i, how)] : []));

/**
 * An edge set back. A corner with an edge that stays slides along it; a corner between two edges that are set back moves
 * in from both. The edge keeps its angles at both corners, so that its line runs on over every seam over which it did.
 */
function moved(outline: readonly PieceEdge[], i: number, how: SetBack): PieceEdge {
  const { isSet, by, slides = () => by, rounded } = how;
  const { before, edge, after } = neighbours(outline, i);
  const inside = rounded ? roundCorner : sharpCorner;
  const start = isSet(before)
    ? inside(endDirection(before), startDirection(edge), by).leaving
    : backAlong(before, slides(before));
  const end = isSet(after)
    ? inside(endDirection(edge), startDirection(after), by).arriving
    : onAlong(after, slides(after));
  const atStart = rounded && isCentre(before) ? { ...start, turned: toSquare(before, edge) } : start;
  const all = withoutShortEnds(edge.curves, SHORT * by);
  const curves = all.map((curve, j) => {
    const [previous, next] = [all[j - 1], all[j + 1]];
    return withEndsMoved(
      curve,
      previous ? inside(directionAt(previous, 'end'), directionAt(curve, 'start'), by).leaving : atStart,
      next ? inside(directionAt(curve, 'end'), directionAt(next, 'start'), by).arriving : end,
    );
  });
  const bent = curves.filter(({ kind }, j) => kind !== all[j]?.kind);
  return { ...edge, curves, inflections: edge.inflections + bent.length };
}

/** A curve at the end of an edge that is shorter than so many times the way it is set back could turn round on its way. */
const SHORT = 3;

/** Curves whose first and last are at least this long (mm): a shorter one is left out, and the next goes in its place. */
function withoutShortEnds(curves: readonly Curve[], least: number): readonly Curve[] {
  const [first, second, ...others] = curves;
  if (first && second && distance(first.from, first.to) < least)
    return withoutShortEnds([startingAt(second, first), ...others], least);
  const [last, before] = [curves.at(-1), curves.at(-2)];
  if (!last || !before || distance(last.from, last.to) >= least) return curves;
  return withoutShortEnds([...curves.slice(0, -2), endingAt(before, last)], least);
}

const stays: EndMove = { by: { x: 0, y: 0 }, turned: 0 };

/** A curve that starts where another one did, headed as that was. */
const startingAt = (curve: Curve, other: Curve): Curve =>
  withEndsMoved(
    curve,
    {
      by: vectorBetween(curve.from, other.from),
      turned: turn(directionAt(curve, 'start'), directionAt(other, 'start')),
    },
    stays,
  );

/** A curve that ends where another one did, headed as that was. */
const endingAt = (curve: Curve, other: Curve): Curve =>
  withEndsMoved(curve, stays, {
    by: vectorBetween(curve.to, other.to),
    turned: turn(directionAt(curve, 'end'), directionAt(other, 'end')),
  });

function neighbours(outline: readonly PieceEdge[], i: number) {
  const [before, edge, after] = [outline.at(i - 1), outline[i], outline[(i + 1) % outline.length]];
  if (!before || !edge || !after) throw new RangeError('An outline has no such edge.');
  return { before, edge, after };
}

/** How the end of one edge and the start of the next move at the corner between them. */
interface CornerMove {
  readonly arriving: EndMove;
  readonly leaving: EndMove;
}

/** The corner between two lines with these headings, moved in from both. */
function sharpCorner(arriving: Vector, leaving: Vector, mm: number): CornerMove {
  const [a, b] = [outward(arriving), outward(leaving)];
  const move = { by: scaled(plus(a, b), -mm / (1 + dot(a, b))), turned: 0 };
  return { arriving: move, leaving: move };
}

/** The same rounded: as far in as its sides, where one line runs on into the other. */
function roundCorner(arriving: Vector, leaving: Vector, mm: number): CornerMove {
  const by = scaled(unit(plus(outward(arriving), outward(leaving))), -mm);
  const half = turn(arriving, leaving) / 2;
  return { arriving: { by, turned: half }, leaving: { by, turned: -half } };
}

const isCentre = ({ name }: PieceEdge): boolean => name.startsWith('centre');

/** By how much the start of an edge turns to leave a straight centre line at right angles. */
const toSquare = (centre: PieceEdge, edge: PieceEdge): number =>
  turn(startDirection(edge), scaled(outward(endDirection(centre)), -1));

/** The corner at an edge's start, moved along it. */
function onAlong(edge: PieceEdge, mm: number): EndMove {
  const { point, direction } = pointAlong(edge, mm);
  return { by: vectorBetween(edgeStart(edge), point), turned: turn(startDirection(edge), direction) };
}

/** The corner at an edge's end, moved back along it. */
function backAlong(edge: PieceEdge, mm: number): EndMove {
  const { point, direction } = pointAlong(edge, edgeLength(edge) - mm);
  return { by: vectorBetween(edgeEnd(edge), point), turned: turn(endDirection(edge), direction) };
}

const turn = (from: Vector, to: Vector): number => Math.atan2(cross(from, to), dot(from, to));

/** An edge without what lies before `from` mm along it, and without what lies beyond `to` mm. */
export function stretch(edge: PieceEdge, from: number, to: number): PieceEdge {
  const names = [edge.name, edge.name] as const;
  const [upTo] = to < edgeLength(edge) - COINCIDENCE ? splitEdgeAt(edge, to, names) : [edge];
  const [, kept] = from > COINCIDENCE ? splitEdgeAt(upTo, from, names) : [upTo, upTo];
  return { ...edge, curves: kept.curves };
}
