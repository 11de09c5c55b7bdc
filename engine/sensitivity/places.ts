import { closeGirths } from '../checks/close.ts';
import { type Tape, tapeFor } from '../checks/tape.ts';
import { walk } from '../checks/walk.ts';
import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';

/**
 * Something on a garment that has a length: a finished girth; a seam as it is sewn (of a gathered one the side it is
 * gathered to); a level, such as that of the hips, by the way down an edge to its notch; an edge of a piece as it is
 * cut; or a notion as it is bought or cut.
 */
export interface MeasuredPlace {
  readonly kind: 'girth' | 'seam' | 'level' | 'edge' | 'notion';
  readonly name: string;
  /** Of an edge its piece, of a level the piece and edge of its notch. */
  readonly on: string;
  /** mm */
  readonly mm: number;
}

/** Everything on a garment that has a length, in the garment's order, to 1e-5 mm. */
export function placesOf(garment: Garment): readonly MeasuredPlace[] {
  const tape = tapeFor(garment);
  const { girths } = closeGirths(garment, tape, Number.POSITIVE_INFINITY);
  const { walks } = walk(garment, tape, Number.POSITIVE_INFINITY);
  return [
    ...girths.map(
      ({ level, finished }): MeasuredPlace => ({ kind: 'girth', name: level, on: '', mm: finished }),
    ),
    ...walks.map(({ seam }): MeasuredPlace => ({ kind: 'seam', name: seam.name, on: '', mm: seam.lengthB })),
    ...garment.pieces.flatMap((piece) => levelsOf(piece, tape)),
    ...garment.pieces.flatMap(({ name: piece, edges }) =>
      edges.map(
        (edge): MeasuredPlace => ({ kind: 'edge', name: edge.name, on: piece, mm: tape.length(edge) }),
      ),
    ),
    ...garment.notions.map(
      ({ name, length }): MeasuredPlace => ({ kind: 'notion', name, on: '', mm: length }),
    ),
  ];
}

/** The levels that a piece has both a line and notches for. */
const levelsOf = (piece: Piece, tape: Tape): readonly MeasuredPlace[] =>
  piece.notches.flatMap(({ name, edge: edgeName, at }): readonly MeasuredPlace[] => {
    const edge = tape.edge(piece.name, edgeName);
    if (!edge || !piece.lines.some((line) => line.kind === 'level' && line.name === name)) return [];
    const fromTop = edgeStart(edge).y <= edgeEnd(edge).y ? at : tape.length(edge) - at;
    return [{ kind: 'level', name, on: `${piece.name}/${edgeName}`, mm: fromTop }];
  });
