import type { Edge } from '../../geometry/curve.ts';
import { edgeLength, pointAlong } from '../../geometry/edge.ts';
import { nearestOnEdge } from '../../geometry/nearest.ts';
import { moved, type Point, vectorBetween } from '../../geometry/point.ts';
import { angleOf, cross, dot, heading, outward, scaled } from '../../geometry/vector.ts';
import type { Piece, PieceEdge } from '../../pattern/piece.ts';
import { textSizes } from '../../render/line-types.ts';
import { textWidth } from '../../render/text-size.ts';

/** Words on a line: their middle, and how they are turned, radians, never upside down. */
export interface NamePlace {
  readonly at: Point;
  readonly turn: number;
  /** Where they stand beside the line, outside all lines: what leads to them, from the line on. */
  readonly leader?: { readonly from: Point; readonly to: Point };
}

/** Along an edge each name wants about so much, mm, and neighbouring lines so far from each other are clear. */
const room = 8;
const clear = 3;

/** White between names beside each other on a line, and before and behind one that a leader leads to, mm. */
const apart = 1;
const before = 1.5;

/** From line to line of names that stand beside each other. */
const lineStep = 1.2 * textSizes.small;

/** In more rows names would stand too far from their lines. */
const mostRows = 4;

/** A second edge must be worth so much of the best there could be. */
const clearlyWorth = 0.8;

/**
 * Where the name of each size is written: on the edge on which there is most room and the sizes lie farthest apart, one
 * size after the other along it, so that no name stands beside its neighbour's. One place a size and an edge, two edges. Where the
 * names have no room beside each other on the lines, leaders lead to them outside.
 */
export function namePlaces(
  pieces: readonly Piece[],
  names: readonly string[],
): readonly (readonly NamePlace[])[] {
  const widths = names.map((name) => textWidth(name, textSizes.small));
  const [first] = pieces;
  if (!first) return [];
  const edges = first.edges
    .filter(({ turn }) => turn !== 'fold')
    .map(({ name }) => pieces.map((piece) => piece.edges.find((edge) => edge.name === name)))
    .filter((sizes): sizes is PieceEdge[] => sizes.every((edge) => edge !== undefined))
    .map((sizes) => ({ sizes, worth: worthOf(sizes) }))
    .toSorted((a, b) => b.worth - a.worth)
    .filter(({ worth }, i) => i === 0 || (i === 1 && worth >= clearlyWorth));
  const places = edges.map(({ sizes }) => {
    const on = sizes.map((edge, i) => placeOn(edge, (i + 1) / (sizes.length + 1)));
    return haveRoom(on, Math.max(...widths)) ? on : ledOut(sizes, on, widths);
  });
  return pieces.map((_, i) => places.flatMap((on) => on[i] ?? []));
}

/** Whether no name on its line covers part of the next. */
const haveRoom = (places: readonly NamePlace[], widest: number): boolean =>
  places.slice(1).every(({ at, turn }, i) => {
    const from = vectorBetween(places[i]?.at ?? at, at);
    const along = heading(turn);
    return Math.abs(dot(from, along)) >= widest + apart || Math.abs(cross(from, along)) >= lineStep;
  });

/** Names beyond the outermost line, all turned alike, in so many rows as keep neighbours apart. */
function ledOut(
  sizes: readonly Edge[],
  on: readonly NamePlace[],
  widths: readonly number[],
): readonly NamePlace[] {
  const [first] = on;
  const middle = sizes[Math.floor(sizes.length / 2)];
  if (!first || !middle) return on;
  const { direction } = pointAlong(middle, edgeLength(middle) / 2);
  const out = outward(direction);
  const level = (p: Point): number => dot(vectorBetween(first.at, p), out);
  const outermost = Math.max(
    ...sizes.flatMap((edge) => [0, 0.25, 0.5, 0.75, 1].map((share) => level(placeOn(edge, share).at))),
  );
  const steps = on.slice(1).map(({ at }, i) => Math.abs(dot(vectorBetween(on[i]?.at ?? at, at), direction)));
  const rows = Math.min(mostRows, Math.ceil(lineStep / Math.min(...steps)));
  return on.map(({ at: from }, i) => {
    const row = (i % rows) * (Math.max(...widths) + 2 * before);
    const to = moved(from, scaled(out, outermost - level(from) + 2 * before + row));
    const at = moved(to, scaled(out, before / 2 + (widths[i] ?? 0) / 2));
    return { at, turn: upright(angleOf(out)), leader: { from, to } };
  });
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
  return { at: point, turn: upright(angleOf(direction)) };
}

/** An angle at which words are not upside down. */
const upright = (angle: number): number => angle - Math.PI * Math.round(angle / Math.PI);
