import { crossings, outlineCrossings, throughPoints } from '../geometry/intersect.ts';
import { centroid, outlineBounds, outlineCurves } from '../geometry/outline.ts';
import { between, distance, type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';

/** Where across a piece a grainline is looked for, as shares of its width. */
const TRIED = [0.5, 0.35, 0.65, 0.2, 0.8];

/**
 * The longest line in this direction that lies inside an outline, through its centre of area or some way beside it,
 * less a fifth at either end.
 */
export function grainAlong(edges: readonly PieceEdge[], direction: Vector): Piece['grain'] {
  const middle = centroid(edges);
  const { left, right } = outlineBounds(edges);
  const places = [middle, ...TRIED.map((share) => point(left + (right - left) * share, middle.y))];
  let longest: Piece['grain'] = { from: middle, to: middle };
  for (const through of places) {
    const found = outlineCrossings(edges, { through, heading: unit(direction) });
    for (let i = 0; i + 1 < found.length; i += 2) {
      const [from, to] = [found[i]?.point, found[i + 1]?.point];
      if (from && to && distance(from, to) > distance(longest.from, longest.to) + CLEARLY)
        longest = { from, to };
    }
  }
  return { from: between(longest.from, longest.to, 0.2), to: between(longest.from, longest.to, 0.8) };
}

/** A place nearer the middle is left only for a line longer by this, mm. */
const CLEARLY = 10;

/** A piece with its grainline drawn elsewhere, in the same direction, where it would run out of the piece. */
export function withGrainInside(piece: Piece): Piece {
  const { from, to } = piece.grain;
  if (!leaves(piece.edges, from, to)) return piece;
  return { ...piece, grain: grainAlong(piece.edges, vectorBetween(from, to)) };
}

function leaves(edges: readonly PieceEdge[], from: Point, to: Point): boolean {
  const length = distance(from, to);
  return outlineCurves(edges).some((curve) =>
    crossings(curve, throughPoints(from, to)).some(({ along }) => along >= 0 && along <= length),
  );
}
