import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  pointAlong,
  startDirection,
} from '../geometry/edge.ts';
import { curvatureAt } from '../geometry/evaluate.ts';
import { vectorBetween } from '../geometry/point.ts';
import { ROUNDING } from '../geometry/tolerance.ts';
import { angleOf, dot, heading, outward, plus, scaled, unit, type Vector } from '../geometry/vector.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';

/** What a hem is shaped by: its own line, and the thread it hangs by. */
type Hemmed = Pick<Piece, 'edges' | 'grain'>;

/**
 * The heading in which the seam that ends at a hem goes on through its allowance: straight on would leave the turned up
 * edge of a flared gore wider than the gore is there. Nothing where the corner after the edge at place `i` is no corner of
 * a hem with a seam.
 *
 * The allowance is the gore above it, mirrored about the hem line. At a depth d the piece above narrows by the lean of
 * the seam against the hem's normal; and where the hem is curved, its parallel below is longer than the one above by
 * 2 d times the angle by which the hem turns. Each end takes in as much of that as the hem has turned between the
 * thread it hangs by and that end. So a gore whose seam leans from its grain by b, its hem an arc square to the seam,
 * narrows at that end by 2 b d; a gore with a straight hem is mirrored as paper folded along it.
 */
export function hemSide(piece: Hemmed, i: number): Vector | undefined {
  const [before, after] = [piece.edges[i], piece.edges[(i + 1) % piece.edges.length]];
  if (!before || !after) return undefined;
  if (before.turn === 'seam' && after.turn === 'hem') return sideOf(piece, before, after, 'start');
  if (before.turn === 'hem' && after.turn === 'seam') return sideOf(piece, after, before, 'end');
  return undefined;
}

function sideOf(piece: Hemmed, seam: PieceEdge, hem: PieceEdge, which: 'start' | 'end'): Vector | undefined {
  const depth = hem.allowance;
  const along = which === 'start' ? startDirection(hem) : endDirection(hem);
  const down = outward(along);
  const end = which === 'start' ? edgeStart(hem) : edgeEnd(hem);
  const away = Math.min(depth, edgeLength(seam));
  const above = pointAlong(seam, which === 'start' ? edgeLength(seam) - away : away).point;
  const risen = -dot(vectorBetween(end, above), down);
  // A seam that runs along its hem rather than up from it has no mirror image there.
  if (depth === 0 || risen < away / 2) return undefined;
  const shifted = dot(vectorBetween(end, above), along) / risen;
  const leaning = leanOf(down, along, hangingBy(piece, hem));
  return unit(onParallel(hem, which, depth, depth * (shifted + 2 * leaning), down, along));
}

/** By how much the normal at the end of a hem leans from the thread it hangs by, against the heading of the hem, radians. */
function leanOf(down: Vector, along: Vector, thread: Vector): number {
  const across = outward(thread);
  const sidewards = dot(across, along) > 0 ? scaled(across, -1) : across;
  return Math.atan2(dot(down, sidewards), dot(down, thread));
}

/** The grain, the thread across it or the bias between, whichever runs down to the middle of the hem. */
function hangingBy({ grain }: Hemmed, hem: PieceEdge): Vector {
  const along = angleOf(vectorBetween(grain.from, grain.to));
  const down = angleOf(outward(vectorBetween(edgeStart(hem), edgeEnd(hem))));
  return heading(along + Math.round((down - along) / (Math.PI / 4)) * (Math.PI / 4));
}

/** From the end of a hem to a place on its parallel, `far` (mm) along it from that parallel's end: as on the circle that the hem bends with there. */
function onParallel(
  hem: PieceEdge,
  which: 'start' | 'end',
  depth: number,
  far: number,
  down: Vector,
  along: Vector,
): Vector {
  const curve = which === 'start' ? hem.curves[0] : hem.curves.at(-1);
  // Curves that turn clockwise bulge outward.
  const bend = curve ? curvatureAt(curve, which === 'start' ? 0 : 1) : 0;
  const turn = (far * bend) / (1 + depth * bend);
  const fallsBack = Math.abs(bend) < ROUNDING ? 0 : (1 - Math.cos(turn)) * (depth + 1 / bend);
  const goesAlong = Math.abs(bend) < ROUNDING ? far : Math.sin(turn) * (depth + 1 / bend);
  return plus(scaled(down, depth - fallsBack), scaled(along, goesAlong));
}
