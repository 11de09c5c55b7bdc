import fc from 'fast-check';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { type Spreading, slashAndSpread } from '../../../engine/shaping/slash-and-spread.ts';
import { codesOf, edgeNamed, made, type PanelShape } from './pieces.ts';

export const spread = (piece: Piece, how: Partial<Spreading>): Piece =>
  made(slashAndSpread(piece, { from: 'top', to: 'hem', lines: 4, amount: 40, ...how })).piece;

/** The same of any panel: nothing where a straight slash line would leave it, which has a test of its own. */
export function spreadWhereInside(piece: Piece, how: Partial<Spreading>): Piece | undefined {
  const opened = slashAndSpread(piece, { from: 'top', to: 'hem', lines: 4, amount: 40, ...how });
  return codesOf(opened)[0] === 'slash-leaves-piece' ? undefined : made(opened).piece;
}

export const lengthOf = (piece: Piece, name: string): number => edgeLength(edgeNamed(piece, name));

export const plainShape: PanelShape = { width: 200, height: 300, flare: 0, drop: 0, sag: 0, bow: 0 };

export const anyParallel = fc.record({
  lines: fc.integer({ min: 1, max: 12 }),
  amount: fc.double({ min: 1, max: 200, noNaN: true }),
});
