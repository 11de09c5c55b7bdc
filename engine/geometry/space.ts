/** A place, a distance or a direction in space: to the wearer's left, up and to the front; mm. */
export type Spatial = readonly [x: number, y: number, z: number];

export const plus = (a: Spatial, b: Spatial): Spatial => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** From b to a. */
export const minus = (a: Spatial, b: Spatial): Spatial => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

export const scaled = (a: Spatial, by: number): Spatial => [a[0] * by, a[1] * by, a[2] * by];

export const unit = (a: Spatial): Spatial => scaled(a, 1 / Math.hypot(...a));

/** Square to both, as a right hand turns from a to b; as long as the area they span. */
export const cross = (a: Spatial, b: Spatial): Spatial => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** A point of a mesh whose coordinates stand one after the other. */
export const placeAt = (points: ArrayLike<number>, p: number): Spatial => [
  points[3 * p] as number,
  points[3 * p + 1] as number,
  points[3 * p + 2] as number,
];

/** Square to a triangle of a mesh, on the side from which its corners run anticlockwise; as long as twice its area. */
export function triangleNormal(points: ArrayLike<number>, a: number, b: number, c: number): Spatial {
  const from = placeAt(points, a);
  return cross(minus(placeAt(points, b), from), minus(placeAt(points, c), from));
}
