import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import type { DimensionPart } from '../../engine/pattern/dimension.ts';
import type { PieceEdge } from '../../engine/pattern/piece.ts';
import type { Mm } from '../../engine/pattern/quantity.ts';
import type { Rule } from '../../engine/pattern/rule.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { stretch } from '../lining/set-back.ts';
import type { Parts } from '../parts.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import type { OpenedTable } from './choices.ts';

/** The edges an opening runs along: on the bodice, and going on below the waist. */
export interface OpenedEdges {
  readonly bodice: EdgeRef;
  readonly skirt: EdgeRef;
}

/** How long the edge of the bodice is, what of it lies above the zip, and how far that reaches. */
interface ZipLengths {
  readonly edgeOf: Mm;
  readonly closedAbove: Rule;
  readonly onBodice: Mm;
  readonly zip: Mm;
  readonly below: Mm;
}

/** Marks the zip along the edges that it is set into. */
export function markZip(
  { laidOut }: Pick<OpenedTable, 'laidOut'>,
  dress: Parts,
  { bodice, skirt }: OpenedEdges,
  { edgeOf, closedAbove, onBodice, zip, below }: ZipLengths,
): void {
  const edgeIn = ({ piece, edge }: EdgeRef): PieceEdge => edgeNamed(pieceNamed(dress.pieces, piece), edge);
  const on = bodice.piece.endsWith('front') ? 'front' : 'back';
  const above = (from: number): DimensionPart => ({
    on,
    curves: curvesBetween(edgeIn(bodice), from, edgeOf.value),
  });
  const under = (): DimensionPart => ({
    on: skirt.piece,
    curves: curvesBetween(edgeIn(skirt), 0, below.value),
  });
  const top = closedAbove.value;
  laidOut(edgeOf, 1, () => [above(0)]);
  laidOut(onBodice, 1, () => [above(top)]);
  laidOut(zip, 1, () => [above(top), under()]);
  laidOut(below, 1, () => [under()]);
}

/** The curves of an edge between two places (mm) from its upper end. */
function curvesBetween(edge: PieceEdge, from: number, to: number): readonly Curve[] {
  const length = edgeLength(edge);
  const down = edgeStart(edge).y < edgeEnd(edge).y;
  return (down ? stretch(edge, from, to) : stretch(edge, length - to, length - from)).curves;
}
