import { edgeEnd, edgeStart } from '../../geometry/edge.ts';
import type { StraightLine } from '../../geometry/intersect.ts';
import { vectorBetween } from '../../geometry/point.ts';
import { unit } from '../../geometry/vector.ts';
import type { Tape } from '../tape.ts';

/** The straight line through the ends of a piece's level line or edge, with a unit heading. */
export function levelOf(
  piece: string,
  { kind, name }: { readonly kind: 'line' | 'edge'; readonly name: string },
  tape: Tape,
): StraightLine | undefined {
  const drawn =
    kind === 'edge' ? tape.edge(piece, name) : tape.piece(piece)?.lines.find((line) => line.name === name);
  if (!drawn) return undefined;
  const from = edgeStart(drawn);
  return { through: from, heading: unit(vectorBetween(from, edgeEnd(drawn))) };
}
