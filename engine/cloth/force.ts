/** Something that holds energy in where the points are (positions flat: x, y, z ..., mm; energies N mm). */
export interface Force {
  /** The points it couples: a, b, a, b ... */
  readonly pairs: ArrayLike<number>;
  /** Told once where the block of a pair stands among the values of the stiffness matrix. */
  bind(place: (a: number, b: number) => number): void;
  energy(x: Float64Array): number;
  /**
   * Adds the derivatives of the energy to `gradient` and its second derivatives, without what would make them less than
   * nothing in some direction, to `values`.
   */
  add(x: Float64Array, gradient: Float64Array, values: Float64Array): void;
}
