import { point } from '../../geometry/point.ts';
import { type Ink, stroke } from '../ink.ts';

/** Side of the grid's squares, mm. */
const side = 50;

/** A calibration grid over a whole page, in squares of 50 mm from its top left corner. */
export const grid = (width: number, height: number): readonly Ink[] => [
  ...steps(width).map((x) => stroke('grid', point(x, 0), point(x, height))),
  ...steps(height).map((y) => stroke('grid', point(0, y), point(width, y))),
];

const steps = (length: number): readonly number[] =>
  Array.from({ length: Math.floor(length / side) + 1 }, (_, i) => i * side);
