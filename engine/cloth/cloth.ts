/** One direction of a woven cloth. */
export interface Thread {
  /** Force per mm of width that would stretch it to twice its length, were it to go on as it begins, N/mm. */
  readonly stretch: number;
  /** Moment per mm of width for a curvature of one per mm, N mm. */
  readonly bending: number;
}

/** A woven cloth, as a sheet without thickness that lies half its thickness off what it lies on. */
export interface WovenCloth {
  readonly name: string;
  /** g/m^2 */
  readonly weight: number;
  /** mm */
  readonly thickness: number;
  readonly warp: Thread;
  readonly weft: Thread;
  /** Force per mm of width in one direction for stretch in the other, N/mm: threads that straighten crimp the others. */
  readonly coupling: number;
  /** Force per mm of width for an angle of one radian between warp and weft, N/mm. */
  readonly shear: number;
  /**
   * Share of its stiffness that is left in a direction that is pressed together. Threads buckle, into folds smaller than the
   * mesh: gathers are such cloth. 1 for a sheet that does not.
   */
  readonly pressed: number;
  /** Of cloth on the body: force along over force across at which it begins to slide. */
  readonly friction: number;
  /** Where its figures are from. */
  readonly source: string;
}

/** Acceleration of fall, mm/s^2 (standard gravity, CGPM 1901). */
const GRAVITY = 9806.65;

/** Weight of a square millimetre of cloth, N. */
export const weightPerArea = ({ weight }: Pick<WovenCloth, 'weight'>): number => weight * 1e-12 * GRAVITY;
