import { notchDepth } from '../finishing/notch-depth.ts';
import { amidStrokes, footOf, whereItPoints } from '../finishing/notch-place.ts';
import type { NotchStrokes } from '../finishing/notches.ts';
import type { Curve } from '../geometry/curve.ts';
import { lengthUpTo } from '../geometry/edge.ts';
import { between } from '../geometry/point.ts';
import type { Notch, PieceEdge } from '../pattern/piece.ts';

/**
 * A notch where its strokes put it. It points straight away from its edge, and stands where its line meets the edge. The two
 * strokes of a double notch stand on either side of its place, unless it lies at the end of the edge. Where the edge was drawn
 * by chords (`byChords`), none of them lies quite as the curve did, and what is square to one of them stands up to a few tenths
 * of a millimetre beside the notch: there the notch is where it points.
 */
export function notchAsDrawn(
  said: Notch,
  edges: readonly PieceEdge[],
  strokes: readonly (readonly Curve[])[],
  byChords = false,
): NotchStrokes {
  const edge = edges.find(({ name }) => name === said.edge);
  if (!edge || edge.curves.length === 0 || strokes.length === 0) return { notch: said, strokes };
  const placeOf = (stroke: readonly Curve[]): number =>
    said.mark === 'dart' || byChords
      ? lengthUpTo(edge, whereItPoints(edge, byChords ? upright(stroke) : stroke))
      : footOf(edge, stroke, said.at).along;
  const at = amidStrokes(edge, strokes.map(placeOf), said.mark);
  return { notch: { ...said, at, depth: notchDepth(strokes) }, strokes };
}

/** Of a wedge the line from its tip to the middle of its base; a slit as it is. */
function upright(stroke: readonly Curve[]): readonly Curve[] {
  const [first, last] = [stroke[0], stroke.at(-1)];
  if (!first || !last || first === last) return stroke;
  return [{ kind: 'line', from: first.to, to: between(first.from, last.to, 0.5) }];
}
