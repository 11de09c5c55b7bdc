import { edgeLength, reversedEdge } from '../geometry/edge.ts';
import { point } from '../geometry/point.ts';
import { type Transform, transformedEdge } from '../geometry/transform.ts';
import type { Piece } from './piece.ts';

/**
 * The mirror image of a piece: the left of a pair whose right is given, or the other way round. It is reflected in
 * x = 0, exactly; every line is then walked from its other end, so that the outline runs clockwise again and level
 * lines still run from left to right. Notches are measured from the new start of their edges, to the accuracy of
 * arc lengths. Everything that has a name keeps it.
 */
export function mirrorImage(piece: Piece): Piece {
  const lengths = new Map(piece.edges.map((edge) => [edge.name, edgeLength(edge)]));
  return {
    ...piece,
    edges: piece.edges.toReversed().map((edge) => reversedEdge(transformedEdge(edge, reflected))),
    grain: { from: reflected(piece.grain.from), to: reflected(piece.grain.to) },
    notches: piece.notches.map((notch) => ({ ...notch, at: (lengths.get(notch.edge) ?? 0) - notch.at })),
    lines: piece.lines.map((line) => reversedEdge(transformedEdge(line, reflected))),
    marks: piece.marks.map((mark) => ({ ...mark, at: reflected(mark.at), angle: Math.PI - mark.angle })),
  };
}

/** Reflects in x = 0. Taken from nothing, so that what lies on x = 0 gets no minus sign. */
export const reflected: Transform = ({ x, y }) => point(0 - x, y);
