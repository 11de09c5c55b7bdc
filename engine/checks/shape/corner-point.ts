import { edgeEnd, edgeStart, endDirection, startDirection } from '../../geometry/edge.ts';
import type { Point } from '../../geometry/point.ts';
import { scaled, type Vector } from '../../geometry/vector.ts';
import type { SeamCorner } from '../../pattern/seam.ts';
import type { Tape } from '../tape.ts';

/**
 * The point at which two neighbouring edges of a piece meet, and the unit heading with which the corner's `edge` leaves
 * it. Undefined where they are no neighbours; where they meet at both their ends, the end of `edge` counts.
 */
export function cornerPoint(
  { piece, edge: name, seam }: SeamCorner,
  tape: Tape,
): { readonly point: Point; readonly leaving: Vector } | undefined {
  const edges = tape.piece(piece)?.edges ?? [];
  const place = edges.findIndex((edge) => edge.name === name);
  const edge = edges[place];
  if (!edge) return undefined;
  if (edges[(place + 1) % edges.length]?.name === seam)
    return { point: edgeEnd(edge), leaving: scaled(endDirection(edge), -1) };
  if (edges.at(place - 1)?.name === seam) return { point: edgeStart(edge), leaving: startDirection(edge) };
  return undefined;
}
