import type { Edge } from '../../geometry/curve.ts';
import { edgeLength, pointAlong } from '../../geometry/edge.ts';
import { nearestOnEdge } from '../../geometry/nearest.ts';
import type { Point } from '../../geometry/point.ts';
import { angleOf } from '../../geometry/vector.ts';
import type { Piece, PieceEdge } from '../../pattern/piece.ts';

/** Words on a line: their middle, and how they are turned, radians, never upside down. */
export interface NamePlace {
  readonly at: Point;
  readonly turn: number;
}

/** Along an edge each name wants about so much, mm, and neighbouring lines so far from each other are clear. */
const room = 8;
const clear = 3;

/** A second edge must be worth so much of the best there could be. */
const clearlyWorth = 0.8;

/**
 * Where the name of each size is written: on the edge on which there is most room and the sizes lie farthest apart, one
 * size after the other along it, so that no name stands beside its neighbour's. One place a size and an edge, two edges.
 */
export function namePlaces(pieces: readonly Piece[]): readonly (readonly NamePlace[])[] {
  const [first] = pieces;
  if (!first) return [];
  const edges = first.edges
    .filter(({ turn }) => turn !== 'fold')
    .map(({ name }) => pieces.map((piece) => piece.edges.find((edge) => edge.name === name)))
    .filter((sizes): sizes is PieceEdge[] => sizes.every((edge) => edge !== undefined))
    .map((sizes) => ({ sizes, worth: worthOf(sizes) }))
    .toSorted((a, b) => b.worth - a.worth)
    .filter(({ worth }, i) => i === 0 || (i === 1 && worth >= clearlyWorth));
  return pieces.map((_, i) =>
    edges.flatMap(({ sizes }) => {
      const edge = sizes[i];
      return edge ? [placeOn(edge, (i + 1) / (pieces.length + 1))] : [];
    }),
  );
}

/** How well names can be read on an edge: by its room, and by how far apart neighbouring lines are in three places. */
function worthOf(sizes: readonly Edge[]): number {
  const shortest = Math.min(...sizes.map((edge) => edgeLength(edge)));
  const gaps = sizes.slice(1).map((edge, i) => {
    const before = sizes[i] ?? edge;
    const apart = [0.25, 0.5, 0.75].map((share) => nearestOnEdge(edge, placeOn(before, share).at).distance);
    return Math.min(...apart);
  });
  const gap = gaps.length === 0 ? clear : Math.min(...gaps);
  // Of edges that are equally clear the longer one.
  return Math.min(1, gap / clear) * Math.min(1, shortest / (room * (sizes.length + 1))) + shortest / 1e5;
}

function placeOn(edge: Edge, share: number): NamePlace {
  const { point, direction } = pointAlong(edge, share * edgeLength(edge));
  const angle = angleOf(direction);
  const turn = angle - Math.PI * Math.round(angle / Math.PI);
  return { at: point, turn };
}
