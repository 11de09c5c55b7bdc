import type { Curve, Line } from '../geometry/curve.ts';
import { edgeLength, pointAlong } from '../geometry/edge.ts';
import type { StraightLine } from '../geometry/intersect.ts';
import { moved, type Point } from '../geometry/point.ts';
import { dot, outward, plus, scaled } from '../geometry/vector.ts';
import { sewnDarts } from '../pattern/dart.ts';
import type { Notch, Piece, PieceEdge } from '../pattern/piece.ts';
import type { Styling } from '../pattern/styling.ts';
import { SHARPEST } from './turn-corner.ts';

/** How notches are cut: a slit into the allowance, or a wedge left standing beyond it. */
export type NotchType = 'slit' | 'wedge';

/** Drafts that leave the kind of notch open call the choice `notchType`. */
export const notchesOf = (styling: Styling): NotchType => (styling.notchType === 'wedge' ? 'wedge' : 'slit');

/** A notch with what is drawn for it: one chain of lines for each slit or wedge. */
export interface NotchStrokes {
  readonly notch: Notch;
  readonly strokes: readonly (readonly Curve[])[];
}

/** Distance between the two strokes of a double notch, mm; common practice, no source. */
const PAIR = 6;

/** Width of a wedge at the cutting line, mm; common practice, no source. */
const WEDGE = 5;

/** How deep a notch is cut, or how far a wedge stands out, mm; common practice, no source. */
export const NOTCH_DEPTH = 4;

/**
 * How deep a notch may be cut into an allowance, mm: never over half of it, or the seam is weakened and cannot be let out
 * (common practice, no source).
 */
export const notchDepth = (allowance: number): number => Math.min(NOTCH_DEPTH, allowance / 2);

/** Length of a notch where there is no allowance to cut into, and it is marked on the cloth instead, mm. */
const BARE = 4;

/**
 * What is drawn for the notches of a piece, square to the edge at each notch's place (found to 1e-6 mm). A slit
 * is a line from the cutting line into the allowance (`notchDepth`). A wedge is a triangle that stands on the cutting line
 * and points outward. Double notches are two, 6 mm apart along the edge, about their place; so near the end of
 * the edge that one would fall off, both are moved inward. At the mouth of a dart the slit prolongs the dart's seam,
 * whatever the type, so that both meet when the dart is folded. Notches on an edge that does not exist are left out.
 */
export const notchStrokes = (piece: Piece, type: NotchType): NotchStrokes[] =>
  piece.notches.flatMap((notch) => {
    const edge = piece.edges.find((candidate) => candidate.name === notch.edge);
    const seam = notch.mark === 'dart' && dartSeam(piece, notch);
    if (edge && seam && edge.allowance > 0) return [{ notch, strokes: [[prolonged(seam, edge, notch.at)]] }];
    return edge ? [{ notch, strokes: places(notch, edge).map((at) => stroke(edge, at, type)) }] : [];
  });

/** The seam of the dart at whose mouth a notch stands, prolonged. */
function dartSeam(piece: Piece, { edge, at }: Notch): StraightLine | undefined {
  const darts = sewnDarts(piece.edges);
  const ends = darts.find(({ before }) => before.name === edge && at > edgeLength(before) / 2);
  return ends?.first ?? darts.find(({ after }) => after.name === edge)?.second;
}

/** A slit at the parallel of an edge, along a seam prolonged to it; no farther out than a corner may reach. */
function prolonged({ through, heading }: StraightLine, edge: PieceEdge, along: number): Line {
  const square = dot(heading, outward(pointAlong(edge, along).direction));
  const lean = Math.max(square, 1 / SHARPEST);
  const at = (out: number): Point => moved(through, scaled(heading, out / lean));
  return line(at(edge.allowance - notchDepth(edge.allowance)), at(edge.allowance));
}

function places(notch: Notch, edge: PieceEdge): number[] {
  if (notch.mark !== 'double') return [notch.at];
  const length = edgeLength(edge);
  const first = Math.max(0, Math.min(notch.at - PAIR / 2, length - PAIR));
  return [first, Math.min(first + PAIR, length)];
}

function stroke(edge: PieceEdge, at: number, type: NotchType): Line[] {
  const { point, direction } = pointAlong(edge, at);
  const normal = outward(direction);
  const off = (along: number, out: number): Point =>
    moved(point, plus(scaled(direction, along), scaled(normal, out)));
  if (edge.allowance === 0) return [line(point, off(0, -BARE))];
  const depth = notchDepth(edge.allowance);
  if (type === 'slit') return [line(off(0, edge.allowance - depth), off(0, edge.allowance))];
  const left = off(-WEDGE / 2, edge.allowance);
  const tip = off(0, edge.allowance + depth);
  const right = off(WEDGE / 2, edge.allowance);
  return [line(left, tip), line(tip, right), line(right, left)];
}

const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
