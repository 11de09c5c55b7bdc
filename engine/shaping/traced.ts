import type { Edge } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Notch, PieceEdge } from '../pattern/piece.ts';

/** A piece as someone traced it: the stitching line in edges, clockwise, in mm, and the marks found on it. */
export interface TracedPiece {
  readonly edges: readonly TracedEdge[];
  readonly notches: readonly Notch[];
  readonly grain?: { readonly from: Point; readonly to: Point };
  /** The height (y, mm) of a guide line that was drawn. */
  readonly guide?: number;
  readonly mmPerUnit: number;
  readonly scaleFrom: 'given' | 'square' | 'drawing';
}

/** An edge, with what becomes of it where the tracing says so. */
export interface TracedEdge extends Edge {
  readonly turn?: PieceEdge['turn'];
}
