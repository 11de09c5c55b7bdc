/** A displacement or direction in millimetres: how far along x (to the wearer's side) and y (down). */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly is?: 'vector';
}

/** The vector x, y (mm). */
export const vector = (x: number, y: number): Vector => ({ x, y });

/** The unit vector at `angle` (radians; 0 points to the side, a quarter turn points down). */
export const heading = (angle: number): Vector => ({ x: Math.cos(angle), y: Math.sin(angle) });

/** The angle of `v` in (-pi, pi]; the reverse of `heading`. */
export const angleOf = (v: Vector): number => Math.atan2(v.y, v.x);

/** Length of `v` (mm). */
export const magnitude = (v: Vector): number => Math.sqrt(v.x * v.x + v.y * v.y);

/** `v` made `factor` times as long. */
export const scaled = (v: Vector, factor: number): Vector => ({ x: v.x * factor, y: v.y * factor });

/** The sum of two vectors. */
export const plus = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y });

/** The first vector less the second. */
export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y });

/** Scalar product. */
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y;

/** Cross product; positive when `b` lies clockwise of `a` as drawn. */
export const cross = (a: Vector, b: Vector): number => a.x * b.y - a.y * b.x;

/** `v` made one long. The zero vector has no direction and stays zero. */
export function unit(v: Vector): Vector {
  const m = magnitude(v);
  return m === 0 ? v : { x: v.x / m, y: v.y / m };
}

/**
 * The normal on the left of a heading as drawn. Outlines run clockwise, so for a heading along an outline
 * this is the side away from the cloth: the side on which seam allowance is added.
 */
export const outward = (v: Vector): Vector => ({ x: v.y, y: -v.x });
