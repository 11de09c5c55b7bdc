/**
 * What cloth cannot enter: writes the distance of a place from its surface (mm, less than nothing inside) and the unit
 * direction straight away from it, four numbers.
 */
export type Obstacle = (x: number, y: number, z: number, out: Float64Array) => void;
