import { escaped } from '../../cutting-file/escaped.ts';
import type { Flavour } from '../../cutting-file/flavour.ts';
import type { NotchStrokes } from '../../finishing/notches.ts';
import type { Curve, Edge } from '../../geometry/curve.ts';
import { asCubic } from '../../geometry/evaluate.ts';
import { nearestOnEdge } from '../../geometry/nearest.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { InsideLine, Piece, PieceEdge } from '../../pattern/piece.ts';
import { notchAsDrawn } from '../notch-as-drawn.ts';
import type { ReadBlock } from './read-blocks.ts';

/** A piece as a block of a cutting file has it. */
export interface PieceAsCut {
  /** The piece that was drafted, each of its stitching lines, folds, levels and notches as the block has it. */
  readonly drawn: Piece;
  /** What is cut: the same, both halves of what is cut on the fold. */
  readonly whole: Piece;
  readonly cut: readonly Curve[];
  readonly notches: readonly NotchStrokes[];
}

/** On the fold, mm: what is unfolded was put on it to the last digit. */
const ON_FOLD = 0.01;

const otherHalf = ' (other half)';

/**
 * Takes a piece from its block: from the draft comes only what no line can say, which edges are sewn together and what they are
 * asked for. Throws what is missing.
 */
export function pieceAsCut(piece: Piece, block: ReadBlock, flavour: Flavour): PieceAsCut {
  const drawn = drawnPiece(piece, block);
  const notches = piece.notches.map((notch) =>
    notchAsDrawn(notch, drawn.edges, strokesOf(block, notch), flavour === 'polylines'),
  );
  return {
    drawn: { ...drawn, notches: notches.map(({ notch }) => notch) },
    whole: wholePiece(drawn, block),
    cut: lineOf(block, 'CUT', undefined),
    notches,
  };
}

/** The curves of one name on a layer, one after the other. */
function lineOf({ layers }: ReadBlock, layer: string, name: string | undefined): readonly Curve[] {
  const found = foundOn(layers, layer, name);
  if (found.length === 0) throw new Error(`it holds no ${name ?? 'line'} on ${layer}`);
  return found;
}

const foundOn = (layers: ReadBlock['layers'], layer: string, name: string | undefined): readonly Curve[] =>
  (layers.get(layer) ?? [])
    .filter(({ names }) => name === undefined || names.includes(escaped(name)))
    .flatMap(({ curves }) => curves);

const strokesOf = (
  { layers }: ReadBlock,
  { edge, name }: { readonly edge: string; readonly name: string },
): readonly (readonly Curve[])[] => {
  const both = [`edge: ${edge}`, `notch: ${name}`].map(escaped);
  const strokes = (layers.get('NOTCH') ?? []).filter(({ names }) => both.every((one) => names.includes(one)));
  if (strokes.length === 0) throw new Error(`it holds no notch “${name}” on ${edge}`);
  return strokes.map(({ curves }) => curves);
};

function drawnPiece(piece: Piece, block: ReadBlock): Piece {
  const edges = piece.edges.map((edge): PieceEdge => {
    if (edge.turn !== 'fold') return { ...edge, curves: lineOf(block, 'STITCH', `edge: ${edge.name}`) };
    // Of what was unfolded it is a line across.
    const asEdge = foundOn(block.layers, 'FOLD', `edge: ${edge.name}`);
    return { ...edge, curves: asEdge.length > 0 ? asEdge : lineOf(block, 'FOLD', `line: ${edge.name}`) };
  });
  const at = edges.findIndex(({ turn }) => turn === 'fold');
  const [drafted, fold] = [piece.edges[at], edges[at]];
  return {
    ...piece,
    edges,
    grain: endsOf(lineOf(block, 'GRAIN', undefined).slice(0, 1)),
    lines: piece.lines.map((line): InsideLine => {
      if (line.kind !== 'level') return line;
      const whole = bent(lineOf(block, 'LEVEL', `level: ${line.name}`));
      return { ...line, curves: drafted && fold ? halfOf(whole, line, drafted, fold) : whole };
    }),
  };
}

/** Both halves of a piece that is written unfolded. */
function wholePiece(piece: Piece, { layers }: ReadBlock): Piece {
  const others = piece.edges.flatMap((edge): readonly PieceEdge[] => {
    const name = `${edge.name}${otherHalf}`;
    const curves = foundOn(layers, 'STITCH', `edge: ${name}`);
    return curves.length > 0 ? [{ ...edge, name, curves }] : [];
  });
  if (others.length === 0) return piece;
  const own = piece.edges.filter(({ turn }) => turn !== 'fold');
  return { ...piece, edges: runningOn([...own, ...others.toReversed()]) };
}

/** Edges of a whole piece, a hem and its other half as the one hem that they are. */
function runningOn(edges: readonly PieceEdge[]): readonly PieceEdge[] {
  const start = edges.findIndex(({ turn }, i) => turn !== 'hem' || edges.at(i - 1)?.turn !== 'hem');
  const joined: PieceEdge[] = [];
  for (const edge of [...edges.slice(start), ...edges.slice(0, start)]) {
    const last = joined.at(-1);
    if (last?.turn !== 'hem' || edge.turn !== 'hem') joined.push(edge);
    else joined[joined.length - 1] = { ...last, curves: [...last.curves, ...edge.curves] };
  }
  return joined;
}

/** Of a level that goes on across the fold the half that was drafted, which begins or ends there as it does in the draft. */
function halfOf(
  whole: readonly Curve[],
  { curves }: InsideLine,
  drafted: Edge,
  fold: Edge,
): readonly Curve[] {
  const isOn = (edge: Edge, p: Point | undefined): boolean =>
    p !== undefined && nearestOnEdge(edge, p).distance < ON_FOLD;
  const joint = whole.slice(0, -1).findIndex(({ to }) => isOn(fold, to)) + 1;
  if (joint === 0) return whole;
  return isOn(drafted, curves[0]?.from) ? whole.slice(joint) : whole.slice(0, joint);
}

/** A level that bends is measured along itself; of straight lines only one that is written as cubics counts as such. */
const bent = (curves: readonly Curve[]): readonly Curve[] =>
  curves.length > 1 ? curves.map(asCubic) : curves;

const endsOf = (curves: readonly Curve[]) => ({
  from: curves[0]?.from ?? point(0, 0),
  to: curves.at(-1)?.to ?? point(0, 0),
});
