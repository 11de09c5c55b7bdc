import type { Edge } from '../geometry/curve.ts';
import type { EdgeRef, Garment } from '../pattern/garment.ts';
import { allowancesOf, aroundCorners, cornerAfter } from './cut-line.ts';
import { type EdgeAllowance, turnCorner } from './turn-corner.ts';

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
 * the longer one, so that both are flush and none is too short.
 */
export function cuttingLines(garment: Garment, tolerance: number): ReadonlyMap<string, Edge> {
  const allowances = new Map(garment.pieces.map((piece) => [piece.name, allowancesOf(piece, tolerance)]));
  const reaches = new Map(garment.pieces.map((piece) => [piece.name, new Map<number, number>()]));
  const ask = (end: SeamEnd, reach: number): void => {
    const asked = reaches.get(end.piece);
    asked?.set(end.corner, Math.max(reach, asked.get(end.corner) ?? 0));
  };
  for (const seam of garment.seams) {
    if (seam.felled) continue;
    for (const whichEnd of ['start', 'end'] as const) {
      const [a, b] = [seam.a, seam.b].map((side) => seamEnd(garment, allowances, side, whichEnd));
      if (!a || !b) continue;
      ask(a, b.reach);
      ask(b, a.reach);
    }
  }
  return new Map(
    garment.pieces.map((piece) => [
      piece.name,
      aroundCorners(piece, allowances.get(piece.name) ?? [], reaches.get(piece.name) ?? new Map()),
    ]),
  );
}

/** Where a side of a seam ends, if its allowance ends square there; undefined on mitres and folds. */
function seamEnd(
  garment: Garment,
  allowances: ReadonlyMap<string, readonly EdgeAllowance[]>,
  side: readonly EdgeRef[],
  whichEnd: 'start' | 'end',
): SeamEnd | undefined {
  const ref = whichEnd === 'start' ? side[0] : side.at(-1);
  const piece = garment.pieces.find((candidate) => candidate.name === ref?.piece);
  if (!piece || !ref) return undefined;
  const place = piece.edges.findIndex((edge) => edge.name === ref.edge);
  if (place < 0) return undefined;
  const atEdgeEnd = (whichEnd === 'end') !== (ref.reversed ?? false);
  const corner = atEdgeEnd ? place : (place - 1 + piece.edges.length) % piece.edges.length;
  const turning = cornerAfter(piece, allowances.get(piece.name) ?? [], corner);
  if (!turning) return undefined;
  const [own, other] = atEdgeEnd ? [turning.before, turning.after] : [turning.after, turning.before];
  if (!(own.rank < other.rank) || own.width === 0) return undefined;
  const { reach } = turnCorner(turning);
  return reach === undefined ? undefined : { piece: piece.name, corner, reach };
}
