import type { Outline } from '../geometry/curve.ts';
import { lengthUpTo, pointAlong } from '../geometry/edge.ts';
import { isStraight } from '../geometry/inflections.ts';
import { levelAt, outlineCrossings } from '../geometry/intersect.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { transformedCurve, transformedEdge } from '../geometry/transform.ts';
import type { InsideLine, Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import { blended } from './blend.ts';
import { type CutPiece, type CutStretch, partAt } from './cut-up.ts';
import { asTransform, type RigidMove, stays } from './rigid-move.ts';

/** An altered piece, and how far blending took its cut edges from where the parts lay (mm). */
export interface Altered {
  readonly piece: Piece;
  readonly deviation: number;
}

/**
 * Lays the parts of a cut-up piece down again and draws it anew: cut edges are blended to fair curves, notches
 * placed where their part carried them, marks and lines moved with the part they lie in. The grainline keeps its
 * direction, and so runs as before along what stayed, a fold above all. Level lines stay level and are drawn across
 * the new outline. `lengths` gives edges the length they have to come out at (mm).
 */
export function reassembled(
  piece: Piece,
  cut: CutPiece,
  moves: readonly RigidMove[],
  lengths: ReadonlyMap<string, number> = new Map(),
): Altered {
  let deviation = 0;
  const edges = piece.edges.map((edge, place): PieceEdge => {
    const stretches = cut.stretches.filter((stretch) => stretch.edge === place);
    const laid = stretches.map(({ curves, part }) => {
      const to = asTransform(moves[part] ?? stays);
      return { name: edge.name, curves: curves.map((curve) => transformedCurve(curve, to)) };
    });
    if (laid.length < 2) return { ...edge, curves: laid[0]?.curves ?? [] };
    const turned = stretches.some(({ part }) => moves[part]?.turn !== moves[stretches[0]?.part ?? 0]?.turn);
    const length = lengths.get(edge.name);
    const blend = blended(laid, {
      inflections: edge.inflections,
      straight:
        !turned && edge.curves.length === 1 && edge.curves.every((curve) => isStraight(curve, COINCIDENCE)),
      ...(length === undefined ? {} : { length }),
    });
    deviation = Math.max(deviation, blend.deviation);
    return { ...edge, curves: blend.curves };
  });
  const moveAt = (p: { readonly x: number; readonly y: number }): RigidMove => moves[partAt(cut, p)] ?? stays;
  const ofGrain = moveAt(between(piece.grain.from, piece.grain.to, 0.5));
  const grainMove = asTransform(ofGrain.turn === 0 ? ofGrain : stays);
  return {
    deviation,
    piece: {
      ...piece,
      edges,
      grain: { from: grainMove(piece.grain.from), to: grainMove(piece.grain.to) },
      notches: piece.notches.map((notch) => placedAgain(notch, piece, edges, cut, moves)),
      lines: piece.lines.flatMap((line) => lineAgain(line, edges, moveAt)),
      marks: piece.marks.map((mark) => {
        const move = moveAt(mark.at);
        return { ...mark, at: asTransform(move)(mark.at), angle: mark.angle + move.turn };
      }),
    },
  };
}

/** A notch at the place of its edge nearest to where its part carried it. */
function placedAgain(
  notch: Notch,
  piece: Piece,
  edges: readonly PieceEdge[],
  { stretches }: CutPiece,
  moves: readonly RigidMove[],
): Notch {
  const place = piece.edges.findIndex(({ name }) => name === notch.edge);
  const [before, after] = [piece.edges[place], edges[place]];
  const own = stretches.filter((stretch: CutStretch) => stretch.edge === place);
  if (!before || !after || own.length < 2) return notch;
  const stretch = own.find(({ from, to }) => notch.at >= from && notch.at <= to);
  const carried = asTransform(moves[stretch?.part ?? 0] ?? stays)(pointAlong(before, notch.at).point);
  return { ...notch, at: lengthUpTo(after, nearestOnEdge(after, carried)) };
}

function lineAgain(
  line: InsideLine,
  edges: readonly PieceEdge[],
  moveAt: (p: { readonly x: number; readonly y: number }) => RigidMove,
): readonly InsideLine[] {
  const [from, to] = [line.curves[0]?.from, line.curves.at(-1)?.to];
  if (!from || !to) return [];
  const middle = between(from, to, 0.5);
  const move = asTransform(moveAt(middle));
  return line.kind === 'level' ? levelLine(line, edges, move(middle).y) : [transformedEdge(line, move)];
}

/** A level line at y right across an outline; none where the outline does not reach. */
export function levelLine(line: InsideLine, outline: Outline, y: number): readonly InsideLine[] {
  const found = outlineCrossings(outline, levelAt(y));
  const [left, right] = [found[0]?.point, found.at(-1)?.point];
  if (!left || !right || left === right) return [];
  return [{ ...line, curves: [{ kind: 'line', from: { x: left.x, y }, to: { x: right.x, y } }] }];
}
