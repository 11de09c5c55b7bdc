import { CORNER, GIRTH, RELATION_ANGLE, WALK } from '../geometry/tolerance.ts';

/** How far a garment may be from true before the checks speak up. */
export interface CheckBounds {
  /** Two sides of a seam, and each stretch between notches, mm. */
  readonly seam: number;
  /** Corner left in a line that should run on once sewn, degrees. */
  readonly join: number;
  /** Finished girth against body plus ease, mm. */
  readonly girth: number;
  /** Kink inside an edge, radians. */
  readonly kink: number;
  /** Cutting line against the allowance asked for, and allowance ends against each other, mm. */
  readonly cutLine: number;
}

/**
 * The bounds a garment is held to. All lie well below what scissors and machine can keep (about 1 mm), so
 * that a garment that passes loses nothing to its pattern. A kink may be a hundred times what a solved
 * relation leaves.
 */
export const draftBounds: CheckBounds = {
  seam: WALK,
  join: (CORNER * 180) / Math.PI,
  girth: GIRTH,
  kink: 100 * RELATION_ANGLE,
  cutLine: WALK,
};
