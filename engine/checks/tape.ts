import type { Edge } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Notch, Piece, PieceEdge } from '../pattern/piece.ts';

/** Finds pieces and edges of one garment by name, and measures each edge only once. */
export interface Tape {
  readonly piece: (name: string) => Piece | undefined;
  readonly edge: (piece: string, edge: string) => PieceEdge | undefined;
  /** The notches on an edge, in the order of the piece. */
  readonly notches: (piece: string, edge: string) => readonly Notch[];
  /** Length of an edge along its curves, mm, to 1e-6 mm. */
  readonly length: (edge: Edge) => number;
}

/** A tape for the pieces of `garment`. Of two pieces or edges with one name the first is found. */
export function tapeFor(garment: Garment): Tape {
  const pieces = new Map<string, Piece>();
  const edges = new Map<string, Map<string, PieceEdge>>();
  const notches = new Map<string, Map<string, Notch[]>>();
  for (const piece of garment.pieces) {
    if (pieces.has(piece.name)) continue;
    pieces.set(piece.name, piece);
    edges.set(piece.name, new Map(piece.edges.toReversed().map((edge) => [edge.name, edge])));
    notches.set(piece.name, notchesByEdge(piece));
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
    notches: (piece, edge) => notches.get(piece)?.get(edge) ?? none,
    length,
  };
}

/** Most edges have no notch. */
const none: readonly Notch[] = [];

function notchesByEdge({ notches }: Piece): Map<string, Notch[]> {
  const found = new Map<string, Notch[]>();
  for (const notch of notches) {
    const known = found.get(notch.edge);
    if (known) known.push(notch);
    else found.set(notch.edge, [notch]);
  }
  return found;
}
