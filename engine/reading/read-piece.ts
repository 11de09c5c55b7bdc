import type { NotchStrokes } from '../finishing/notches.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, distance, vectorBetween } from '../geometry/point.ts';
import { angleOf } from '../geometry/vector.ts';
import type { InsideLine, Mark, Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { insideClass } from '../render/drawing.ts';
import type { PieceMetadata } from '../render/metadata.ts';
import { type NamedLines, notchName } from './drawn.ts';
import { notchAsDrawn } from './notch-as-drawn.ts';

/** A piece with its cutting line and the strokes of its notches, all as drawn. Whatever is not drawn becomes an issue of the drawing. */
export function readPiece(
  said: PieceMetadata,
  drawn: NamedLines,
): { readonly piece: Piece; readonly cut: readonly Curve[]; readonly notches: readonly NotchStrokes[] } {
  const { name } = said;
  const edges = said.edges.map((edge): PieceEdge => {
    const line = { kind: 'stitch', piece: name, own: edge.name };
    drawn.refuseOtherTurn(line, edge.turn);
    return { ...edge, curves: drawn.line(line) };
  });
  const notches = said.notches.map((notch) => readNotch(notch, edges, name, drawn));
  const piece: Piece = {
    name,
    number: said.number,
    edges,
    grain: endsOf(drawn.line({ kind: 'grain', piece: name })),
    notches: notches.map(({ notch }) => notch),
    lines: said.lines.map(
      (line): InsideLine => ({
        ...line,
        curves: drawn.line({ kind: insideClass[line.kind], piece: name, own: line.name }),
      }),
    ),
    marks: said.marks.map((mark) => readMark(mark, name, drawn)),
    cut: said.cut,
  };
  return { piece, cut: drawn.loop({ kind: 'cut', piece: name }), notches };
}

const readNotch = (
  said: Notch,
  edges: readonly PieceEdge[],
  piece: string,
  drawn: NamedLines,
): NotchStrokes =>
  notchAsDrawn(said, edges, drawn.strokes({ kind: 'notch', piece, own: notchName(said.edge, said.name) }));

function readMark({ name, kind }: PieceMetadata['marks'][number], piece: string, drawn: NamedLines): Mark {
  if (kind === 'drill')
    return { name, kind, at: drawn.middle({ kind, piece, own: name }), angle: 0, length: 0 };
  const { from, to } = endsOf(drawn.line({ kind, piece, own: name }));
  return {
    name,
    kind,
    at: between(from, to, 0.5),
    angle: angleOf(vectorBetween(from, to)),
    length: distance(from, to),
  };
}

const nowhere = { x: 0, y: 0 };

const endsOf = (curves: readonly Curve[]) => ({
  from: curves[0]?.from ?? nowhere,
  to: curves.at(-1)?.to ?? nowhere,
});
