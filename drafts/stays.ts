import { edgeLength } from '../engine/geometry/edge.ts';
import type { Notion } from '../engine/pattern/garment.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import type { EdgeRef, Seam } from '../engine/pattern/seam.ts';
import { edgeNamed, pieceNamed } from './piece-edges.ts';

/** What keeps the edges from stretching that would, and must not. */
export const stayTapes = {
  backNeck: 'stay tape for the back neckline',
  frontNeck: 'stay tape for the front neckline',
  straps: 'stay tape for the straps',
  shoulders: 'stay tape for the shoulders',
} as const;

/** Tapes for necklines, straps and shoulders, as long as these, left and right; for those that the pieces have. */
export function stayNotions(pieces: readonly Piece[], seams: readonly Seam[]): readonly Notion[] {
  const tape = (name: string, length: number, note: string): readonly Notion[] =>
    length === 0 ? [] : [{ name, count: 2, length, note }];
  const overLine = 'narrow, on the wrong side over the stitching line';
  return [
    ...tape(stayTapes.backNeck, necklineOf(pieces, 'back'), overLine),
    ...tape(stayTapes.frontNeck, necklineOf(pieces, 'front'), overLine),
    ...tape(
      stayTapes.straps,
      lengthOf(pieces, ['front strap', 'back strap'], (edge) => edge === 'inner'),
      'narrow, along the inner edge from end to end',
    ),
    ...tape(stayTapes.shoulders, alongSeam(pieces, seams, 'shoulder'), 'narrow, sewn in with the seam'),
  ];
}

/** The neckline of a half, over the panels it runs across, where it is sewn and not folded. */
const necklineOf = (pieces: readonly Piece[], half: 'front' | 'back'): number =>
  lengthOf(
    pieces,
    pieces.map(({ name }) => name).filter((name) => name.endsWith(half)),
    (edge) => edge.startsWith('neckline'),
  );

const lengthOf = (
  pieces: readonly Piece[],
  names: readonly string[],
  counts: (edge: string) => boolean,
): number =>
  pieces
    .filter(({ name }) => names.includes(name))
    .flatMap(({ edges }) => edges.filter(({ name, turn }) => turn === 'seam' && counts(name)))
    .reduce((sum, edge) => sum + edgeLength(edge), 0);

const alongSeam = (pieces: readonly Piece[], seams: readonly Seam[], name: string): number =>
  (seams.find((seam) => seam.name === name)?.b ?? []).reduce(
    (sum, { piece, edge }: EdgeRef) => sum + edgeLength(edgeNamed(pieceNamed(pieces, piece), edge)),
    0,
  );
