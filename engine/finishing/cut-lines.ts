import { flatMapped } from '../flat-mapped.ts';
import type { Edge } from '../geometry/curve.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { EdgeRef } from '../pattern/seam.ts';
import { allowancesOf, aroundCorners, cornerAfter, rankOf } from './cut-line.ts';
import type { EdgeAllowance } from './edge-allowance.ts';
import { around } from './one-line.ts';
import { turnCorner } from './turn-corner.ts';

/** A piece with the allowances of its edges, in order. */
interface AllowedPiece {
  readonly piece: Piece;
  readonly allowances: readonly EdgeAllowance[];
}

/** Where one side of a seam ends: which corner of which piece (the place of the edge that ends there). */
interface SeamEnd {
  readonly piece: string;
  readonly corner: number;
  /** How far the seam's own allowance reaches beyond the seam's end, mm. */
  readonly reach: number;
}

/**
 * The cutting lines of all pieces, to `tolerance` (mm), by piece name. Where a curved edge crosses the end of a
 * seam, the allowances of the two sides would end a few hundredths or tenths of a millimetre apart, since the
 * blunt corner follows the curve and the sharp one its straight prolongation. The shorter end is lengthened to
 * the longer one, so that both are flush and none is too short; and so on to whatever else is sewn to the longer one,
 * as left and right are to a panel that they share.
 */
export function cuttingLines(garment: Garment, tolerance: number): ReadonlyMap<string, Edge> {
  const pieces = new Map<string, AllowedPiece>(
    garment.pieces.map((piece) => [piece.name, { piece, allowances: allowancesOf(piece, tolerance) }]),
  );
  const machined = garment.seams.filter(({ felled }) => !felled);
  const reaches = agreed(
    flatMapped(machined, (seam) =>
      flatMapped(['start', 'end'] as const, (whichEnd) => {
        const a = seamEnd(pieces, seam.a, whichEnd);
        const b = a && seamEnd(pieces, seam.b, whichEnd);
        return a && b ? [[a, b] as const] : [];
      }),
    ),
  );
  return new Map(
    Array.from(pieces, ([name, { piece, allowances }]) => [
      name,
      aroundCorners(piece, allowances, reaches.get(name) ?? new Map()),
    ]),
  );
}

/** How far the allowances at each corner of each piece must reach, so that no two that meet differ. */
function agreed(
  meeting: readonly (readonly [SeamEnd, SeamEnd])[],
): ReadonlyMap<string, ReadonlyMap<number, number>> {
  const reaches = new Map<string, Map<number, number>>();
  const reachOf = ({ piece, corner, reach }: SeamEnd): number =>
    Math.max(reach, reaches.get(piece)?.get(corner) ?? 0);
  for (let settled = false; !settled; ) {
    settled = true;
    for (const ends of meeting) {
      const longest = Math.max(...ends.map(reachOf));
      for (const end of ends) {
        if (!(reachOf(end) < longest)) continue;
        settled = false;
        reaches.set(end.piece, (reaches.get(end.piece) ?? new Map()).set(end.corner, longest));
      }
    }
  }
  return reaches;
}

/** Where a side of a seam ends, if its allowance ends square there; undefined on mitres and folds. */
function seamEnd(
  pieces: ReadonlyMap<string, AllowedPiece>,
  side: readonly EdgeRef[],
  whichEnd: 'start' | 'end',
): SeamEnd | undefined {
  const ref = whichEnd === 'start' ? side[0] : side.at(-1);
  const found = ref && pieces.get(ref.piece);
  if (!found) return undefined;
  const { piece, allowances } = found;
  const place = piece.edges.findIndex((edge) => edge.name === ref.edge);
  if (place < 0) return undefined;
  const atEdgeEnd = (whichEnd === 'end') !== (ref.reversed ?? false);
  const corner = atEdgeEnd ? place : around(place - 1, piece.edges.length);
  const [own, other] = [
    piece.edges[place],
    piece.edges[atEdgeEnd ? around(place + 1, piece.edges.length) : corner],
  ];
  if (!own || !other || !(rankOf(own) < rankOf(other)) || own.allowance === 0) return undefined;
  const turning = cornerAfter(piece, allowances, corner);
  const reach = turning && turnCorner(turning).reach;
  return reach === undefined ? undefined : { piece: piece.name, corner, reach };
}
