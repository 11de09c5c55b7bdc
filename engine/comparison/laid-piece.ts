import { sides } from '../body/side.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart, pointAlong } from '../geometry/edge.ts';
import { laidOn } from '../geometry/laid-on.ts';
import { centroid } from '../geometry/outline.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { movedBy, type Transform, transformedCurve, turnedBy } from '../geometry/transform.ts';
import { angleOf, dot, scaled, unit } from '../geometry/vector.ts';
import { mirrorImage, reflected } from '../pattern/mirror-image.ts';
import type { Piece } from '../pattern/piece.ts';
import type { KnownSheet } from './known-draft.ts';

/** A piece and what it was before, the old one drawn the same way round and laid on the new one by `lay`. */
export interface PieceOnOld {
  /** What is compared is called by this: the new piece, or the old one of a pair that is one piece now. */
  readonly named: string;
  readonly now: Piece;
  readonly was: Piece;
  /** The old piece's own name. */
  readonly from: string;
  /** The old cutting line; none where there was none. */
  readonly cut: readonly Curve[];
  readonly lay: Transform;
  /**
   * By the edges that both have, so that as much as can be of these lies on itself; where both have the same edge on a
   * fold, with the fold on the fold; where they have no edge in common, by grain and centre of area.
   */
  readonly by: 'edges' | 'fold' | 'grain';
}

/** The pieces of two drafts that are there before and after, in the new order; new ones and those that are gone. */
export interface Pairing {
  readonly laid: readonly PieceOnOld[];
  readonly fresh: readonly Piece[];
  readonly gone: readonly Piece[];
}

/** Places looked at along each edge, its ends among them. */
export const PLACES = 25;

/**
 * The pieces of one draft laid on those of another, by name; where left and right have come to differ, or have
 * ceased to, each of them is laid on the pair. Where a piece stands on the paper is no move.
 */
export function paired(before: Omit<KnownSheet, 'notions'>, after: readonly Piece[]): Pairing {
  const pairs = after.map((now) => ({ now, earlier: earlierOf(now, before.pieces) }));
  const laid = pairs.flatMap(({ now, earlier }) =>
    earlier.map(({ named, from, mirrored }): PieceOnOld => {
      const was = mirrored ? mirrorImage(from) : from;
      const old = before.cutLines.get(from.name)?.curves ?? [];
      const cut = mirrored ? old.map((curve) => transformedCurve(curve, reflected)) : old;
      return { named, now, was, from: from.name, cut, ...layOf(was, now) };
    }),
  );
  const kept = new Set(laid.map(({ from }) => from));
  return {
    laid,
    fresh: pairs.filter(({ earlier }) => earlier.length === 0).map(({ now }) => now),
    gone: before.pieces.filter(({ name }) => !kept.has(name)),
  };
}

interface EarlierPiece {
  readonly named: string;
  readonly from: Piece;
  readonly mirrored: boolean;
}

/** What a piece was: the same, the pair that it is now one of, or the right and the left that are now a pair. */
function earlierOf(now: Piece, before: readonly Piece[]): readonly EarlierPiece[] {
  const same = before.find(({ name }) => name === now.name);
  if (same) return [{ named: now.name, from: same, mirrored: false }];
  const pair = before.find(({ name }) => name === pairOf(now));
  if (pair) return [{ named: now.name, from: pair, mirrored: isMirrored(now, pair) }];
  return before.flatMap((from) =>
    pairOf(from) === now.name ? [{ named: from.name, from, mirrored: isMirrored(from, now) }] : [],
  );
}

/** The pair that a piece is one of. On a piece read from a file only its name says so. */
const pairOf = ({ name, oneOf }: Piece): string | undefined =>
  oneOf?.pair ??
  sides.flatMap((side) => (name.startsWith(`${side} `) ? [name.slice(side.length + 1)] : []))[0];

/** Whether one of a pair is drawn as the mirror image of what the pair is drawn as; where it does not say, as it fits better. */
function isMirrored(one: Piece, pair: Piece): boolean {
  if (one.oneOf) return one.oneOf.mirrored;
  const [plain, turned] = [one, mirrorImage(one)].map((each) => {
    const shared = sharedEdges(each, pair);
    const { lay } = layOf(each, pair);
    return shared.flatMap(({ old, fresh }) => old.map((p, i) => distance(lay(p), fresh[i] ?? p)));
  });
  const total = (away: readonly number[] = []): number => away.reduce((sum, each) => sum + each, 0);
  return total(turned) < total(plain);
}

function layOf(was: Piece, now: Piece): Pick<PieceOnOld, 'lay' | 'by'> {
  const shared = sharedEdges(was, now);
  const fold = now.edges.find(({ turn }) => turn === 'fold');
  const old = was.edges.find(({ turn, name }) => turn === 'fold' && name === fold?.name);
  if (fold && old) return { lay: foldOnFold(old, fold, shared), by: 'fold' };
  if (shared.length > 0) {
    const lay = laidOn(
      shared.flatMap(({ old }) => old),
      shared.flatMap(({ fresh }) => fresh),
    );
    return { lay, by: 'edges' };
  }
  const [from, to] = [centroid(was.edges), centroid(now.edges)];
  const turn = turnedBy(from, grainAngle(now) - grainAngle(was));
  const move = movedBy(vectorBetween(from, to));
  return { lay: (p) => move(turn(p)), by: 'grain' };
}

/** Lays one fold along another, moved along it so that the places which stayed at one height are the most. */
function foldOnFold(
  was: Edge,
  now: Edge,
  shared: readonly { readonly old: readonly Point[]; readonly fresh: readonly Point[] }[],
): Transform {
  const chord = (edge: Edge) => vectorBetween(edgeStart(edge), edgeEnd(edge));
  const along = unit(chord(now));
  const turn = turnedBy(edgeStart(was), angleOf(chord(now)) - angleOf(chord(was)));
  const onLine = movedBy(vectorBetween(edgeStart(was), edgeStart(now)));
  const lay: Transform = (p) => onLine(turn(p));
  const heights = shared
    .flatMap(({ old, fresh }) => old.map((p, i) => dot(along, vectorBetween(lay(p), fresh[i] ?? lay(p)))))
    .toSorted((a, b) => a - b);
  const slide = movedBy(scaled(along, heights[Math.floor(heights.length / 2)] ?? 0));
  return (p) => slide(lay(p));
}

/** The direction of a grainline, radians; it has no head and no tail, so that half a turn is none. */
export function grainAngle({ grain }: Piece): number {
  const angle = angleOf(vectorBetween(grain.from, grain.to));
  return angle - Math.PI * Math.floor(angle / Math.PI);
}

/** Places along the edges that two pieces have in common, the same share of each edge at the same index. */
const sharedEdges = (was: Piece, now: Piece) =>
  now.edges.flatMap((edge) => {
    const old = was.edges.find(({ name }) => name === edge.name);
    return old ? [{ old: placesAlong(old), fresh: placesAlong(edge) }] : [];
  });

/** Places along an edge or a line at even distances, its ends among them; none on one without curves. */
export function placesAlong(edge: Edge): readonly Point[] {
  if (edge.curves.length === 0) return [];
  const length = edgeLength(edge);
  return Array.from({ length: PLACES }, (_, i) => pointAlong(edge, (i / (PLACES - 1)) * length).point);
}
