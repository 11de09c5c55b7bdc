import { edgeLength, reversedEdge } from '../../engine/geometry/edge.ts';
import { type Transform, transformedCurve, transformedEdge } from '../../engine/geometry/transform.ts';
import type { Garment, Wearer } from '../../engine/pattern/garment.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';

/** A garment with every piece redrawn by a transform that multiplies lengths by `factor`; `flips` mirrors it. */
export function redrawn(garment: Garment, to: Transform, factor: number, flips: boolean): Garment {
  return {
    ...garment,
    ...(garment.wearer && { wearer: redrawnWearer(garment.wearer, factor) }),
    pieces: garment.pieces.map((piece) => redrawnPiece(piece, to, factor, flips)),
    seams: garment.seams.map((seam) => ({
      ...seam,
      ease: seam.ease * factor,
    })),
    girths: garment.girths.map((girth) => ({
      ...girth,
      body: girth.body * factor,
      ease: girth.ease * factor,
    })),
    shapes: garment.shapes.map((shape) => redrawnShape(shape, factor)),
  };
}

const redrawnWearer = ({ cup, bust, underBust, waist, hip }: Wearer, factor: number): Wearer => ({
  cup,
  bust: bust * factor,
  underBust: underBust * factor,
  waist: waist * factor,
  hip: hip * factor,
});

/** A claim about shape whose lengths are multiplied, but for how deep notches are cut, which is always the same. */
function redrawnShape(shape: ShapeClaim, factor: number): ShapeClaim {
  if (!isLength(shape)) return shape;
  const { low, high } = shape;
  return {
    ...shape,
    ...(low === undefined ? {} : { low: low * factor }),
    ...(high === undefined ? {} : { high: high * factor }),
    ...(shape.kind === 'drafted' ? { value: shape.value * factor } : {}),
    ...('plus' in shape && shape.plus !== undefined ? { plus: shape.plus * factor } : {}),
  };
}

/** Whether the figure of a claim is a length on the pieces. */
export const isLength = (shape: ShapeClaim): boolean =>
  shape.kind === 'drafted'
    ? shape.unit === 'mm'
    : !['notch height', 'lean', 'grain', 'sewn-in angle', 'notch depth'].includes(shape.kind);

function redrawnPiece(piece: Piece, to: Transform, factor: number, flips: boolean): Piece {
  const edges = piece.edges.map((edge) => {
    const moved = { ...transformedEdge(edge, to), allowance: edge.allowance * factor };
    return flips ? reversedEdge(moved) : moved;
  });
  return {
    ...piece,
    edges: flips ? edges.toReversed() : edges,
    grain: { from: to(piece.grain.from), to: to(piece.grain.to) },
    notches: piece.notches.map((notch) => {
      const edge = edges.find((candidate) => candidate.name === notch.edge);
      const at = notch.at * factor;
      return { ...notch, at: flips && edge ? edgeLength(edge) - at : at };
    }),
    lines: piece.lines.map((line) => ({
      ...line,
      curves: line.curves.map((curve) => transformedCurve(curve, to)),
      ...(line.fullness === undefined ? {} : { fullness: line.fullness * factor }),
    })),
    marks: piece.marks.map((mark) => ({ ...mark, at: to(mark.at), length: mark.length * factor })),
  };
}
