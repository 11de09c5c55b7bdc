import type { ScreenSeam, SeamSide } from '../../draft-parts.ts';

/** A stop that was computed to lie where the walk stands may lie so much beyond, mm. */
const rounding = 1e-6;

/** An edge of one piece in one seam, and the side of the seam it lies on. */
export interface SewnEdge {
  readonly seam: ScreenSeam;
  readonly own: SeamSide;
  readonly other: SeamSide;
  readonly side: 'a' | 'b';
  /** Which edge of its side it is, and how far along that it begins, mm. */
  readonly index: number;
  readonly begins: number;
  readonly length: number;
}

/** The seams that an edge is sewn in. */
export const seamsAt = (seams: readonly ScreenSeam[], piece: string, edge: string): readonly SewnEdge[] =>
  seams.flatMap((seam) =>
    (['a', 'b'] as const).flatMap((side): readonly SewnEdge[] => {
      const own = seam[side];
      const index = own.edges.findIndex((ref) => ref.piece === piece && ref.edge === edge);
      const found = own.edges[index];
      if (!found) return [];
      const begins = own.edges.slice(0, index).reduce((sum, { length }) => sum + length, 0);
      const other = seam[side === 'a' ? 'b' : 'a'];
      return [{ seam, own, other, side, index, begins, length: found.length }];
    }),
  );

/** A place on an edge of a piece, mm from where the edge itself begins. */
export interface SeamPlace {
  readonly piece: string;
  readonly edge: string;
  readonly at: number;
  /** The seam runs against the edge. */
  readonly reversed: boolean;
}

/** Where both sides of a seam lie on each other. */
export interface WalkedTo {
  readonly own: SeamPlace;
  readonly partner: SeamPlace;
  /** The notch that has just been met, or is; the start at first. */
  readonly stop: number;
}

/**
 * An edge walked to a share of its length: the place on it, and the one on its partner that comes to lie there. Between one
 * pair of notches and the next both sides are used up evenly, so that notch meets notch and gathers are drawn up.
 */
export function walkedTo(sewn: SewnEdge, share: number): WalkedTo | undefined {
  const { seam, own, other, side, index, begins, length } = sewn;
  const along = begins + share * length;
  const partnerSide = side === 'a' ? 'b' : 'a';
  const { stops } = seam;
  const next = stops.findIndex((stop, i) => i > 0 && along <= stop[side]);
  const to = stops[next < 0 ? stops.length - 1 : next];
  const from = stops[(next < 0 ? stops.length - 1 : next) - 1];
  const edge = own.edges[index];
  if (!to || !from || !edge) return undefined;
  const part = to[side] > from[side] ? (along - from[side]) / (to[side] - from[side]) : 0;
  const across = from[partnerSide] + Math.min(1, part) * (to[partnerSide] - from[partnerSide]);
  const partner = placeOn(other, across);
  if (!partner) return undefined;
  return {
    own: placed(edge, share * length),
    partner,
    stop: stops.findLastIndex((stop) => stop[side] <= along + rounding),
  };
}

/** The place so far along a side of a seam; at a joint, that on the edge before it. */
function placeOn({ edges }: SeamSide, along: number): SeamPlace | undefined {
  let rest = along;
  for (const [i, edge] of edges.entries()) {
    if (rest <= edge.length || i === edges.length - 1) return placed(edge, Math.min(rest, edge.length));
    rest -= edge.length;
  }
  return undefined;
}

const placed = ({ piece, edge, reversed, length }: SeamSide['edges'][number], along: number): SeamPlace => ({
  piece,
  edge,
  at: reversed ? length - along : along,
  reversed: reversed ?? false,
});

/** A place with the way the seam runs through it, radians. */
export interface Heading {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

/**
 * The move that lays a partner along a seam: its place on the other, heading the same way, its cloth on the other side of the
 * seam. Where both have their cloth on one side it is turned over, as it is by hand. SVG's six numbers.
 */
export function laidAlong(own: Heading, partner: Heading, turnedOver: boolean): readonly number[] {
  const flip = turnedOver ? -1 : 1;
  const [cosA, sinA] = [Math.cos(own.angle), Math.sin(own.angle)];
  const [cosB, sinB] = [Math.cos(partner.angle), Math.sin(partner.angle)];
  const a = cosA * cosB + flip * sinA * sinB;
  const b = sinA * cosB - flip * cosA * sinB;
  const c = cosA * sinB - flip * sinA * cosB;
  const d = sinA * sinB + flip * cosA * cosB;
  return [a, b, c, d, own.x - a * partner.x - c * partner.y, own.y - b * partner.x - d * partner.y];
}

/** Whether a partner has to be turned over: cloth lies right of an edge, so it does where both run the same way in the seam. */
export const isTurnedOver = (own: SeamPlace, partner: SeamPlace): boolean =>
  own.reversed === partner.reversed;
