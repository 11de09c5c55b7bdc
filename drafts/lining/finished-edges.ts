import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, pointAlong, splitEdgeAt } from '../../engine/geometry/edge.ts';
import { withEndsMoved } from '../../engine/geometry/ends-moved.ts';
import { moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { outward, plus, scaled, unit } from '../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';
import { edgeNamed } from '../piece-edges.ts';

/** The finished edges of a side panel, set back: its strap end, and its armhole from the strap to the underarm. */
export interface SideTop {
  readonly strapInner: Point;
  readonly strapOuter: Point;
  readonly armhole: Curve;
}

/**
 * Sets the top of a side panel back by `mm`: the strap end down the princess seam and in from the armhole, the
 * armhole down the side seam. Headings stay, so the lines still run on from panel to panel.
 */
export function sideTop(panel: Piece, princess: PieceEdge, armhole: Curve, mm: number): SideTop {
  const strap = edgeNamed(panel, 'strap');
  const outwards = alongStraight(strap);
  const atStrap = scaled(plus(outwards, outward(outwards)), -mm);
  return {
    strapInner: beforeEnd(princess, mm),
    strapOuter: moved(edgeEnd(strap), atStrap),
    armhole: withEndsMoved(armhole, atStrap, scaled(alongStraight(edgeNamed(panel, 'side')), mm)),
  };
}

/** The back neckline `mm` further down the centre back and princess seams, with its headings. */
export function loweredNeckline(centreBack: Piece, mm: number): readonly Curve[] {
  const neckline = edgeNamed(centreBack, 'neckline');
  const start = vectorBetween(edgeStart(neckline), beforeEnd(edgeNamed(centreBack, 'centre back'), mm));
  const end = vectorBetween(edgeEnd(neckline), pointAlong(edgeNamed(centreBack, 'princess'), mm).point);
  return neckline.curves.map((curve) => withEndsMoved(curve, start, end));
}

/** An edge without what lies before `from` mm along it, and without what lies beyond `to` mm. */
export function stretch(edge: PieceEdge, from: number, to: number): PieceEdge {
  const names = [edge.name, edge.name] as const;
  const [upTo] = to < edgeLength(edge) ? splitEdgeAt(edge, to, names) : [edge];
  const [, kept] = from > 0 ? splitEdgeAt(upTo, from, names) : [upTo, upTo];
  return { ...edge, curves: kept.curves };
}

/** The point `mm` before an edge's end. */
export const beforeEnd = (edge: PieceEdge, mm: number): Point =>
  pointAlong(edge, edgeLength(edge) - mm).point;

/** The heading of a straight edge. */
const alongStraight = (edge: PieceEdge) => unit(vectorBetween(edgeStart(edge), edgeEnd(edge)));
