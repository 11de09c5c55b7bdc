import type { Solution } from '../engine/constraints/solution.ts';
import { flatMapped } from '../engine/flat-mapped.ts';
import type { Result } from '../engine/issue.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import { type StagedSewing, stagesTogether } from './sewing-stages.ts';

/** What one part of a garment adds to it. */
export type Parts = Required<
  Pick<Garment, 'pieces' | 'seams' | 'joins' | 'girths' | 'notions' | 'shapes'>
> & {
  readonly sewing?: StagedSewing;
};

/**
 * A part of a garment on paper: it has asked the sketch for its lines, and waits to cut its pieces from the
 * solved sketch.
 */
export type Cut = (solution: Solution) => Parts;

/** The same for a whole garment, of which a part drawn later may still turn out impossible. */
export type CutAll = (solution: Solution) => Result<Parts>;

/** A part that adds nothing. */
export const nothing: Omit<Parts, 'sewing'> = {
  pieces: [],
  seams: [],
  joins: [],
  girths: [],
  notions: [],
  shapes: [],
};

/** Several parts as one. */
export const together = (...parts: readonly Parts[]): Parts => ({
  pieces: flatMapped(parts, (part) => part.pieces),
  seams: flatMapped(parts, (part) => part.seams),
  joins: flatMapped(parts, (part) => part.joins),
  girths: flatMapped(parts, (part) => part.girths),
  notions: flatMapped(parts, (part) => part.notions),
  shapes: flatMapped(parts, (part) => part.shapes),
  sewing: stagesTogether(parts.map((part) => part.sewing ?? {})),
});

/** The pieces in the order of their numbers, numbered without gaps. */
export const inOrder = (parts: Parts): Parts => ({
  ...parts,
  pieces: parts.pieces
    .toSorted((a, b) => a.number - b.number)
    .map((piece, i) => ({ ...piece, number: i + 1 })),
});
