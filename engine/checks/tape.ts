import type { Edge } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';

/** Finds pieces and edges of one garment by name, and measures each edge only once. */
export interface Tape {
  readonly piece: (name: string) => Piece | undefined;
  readonly edge: (piece: string, edge: string) => PieceEdge | undefined;
  /** Length of an edge along its curves, mm, to 1e-6 mm. */
  readonly length: (edge: Edge) => number;
}

/** A tape for the pieces of `garment`. Of two pieces or edges with one name the first is found. */
export function tapeFor(garment: Garment): Tape {
  const pieces = new Map<string, Piece>();
  const edges = new Map<string, Map<string, PieceEdge>>();
  for (const piece of garment.pieces) {
    if (pieces.has(piece.name)) continue;
    pieces.set(piece.name, piece);
    edges.set(piece.name, new Map(piece.edges.toReversed().map((edge) => [edge.name, edge])));
  }
  const lengths = new Map<Edge, number>();
  const length = (edge: Edge): number => {
    const known = lengths.get(edge);
    if (known !== undefined) return known;
    const measured = edgeLength(edge);
    lengths.set(edge, measured);
    return measured;
  };
  return {
    piece: (name) => pieces.get(name),
    edge: (piece, edge) => edges.get(piece)?.get(edge),
    length,
  };
}
