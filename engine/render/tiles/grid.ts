import { point } from '../../geometry/point.ts';
import { millimetres, type Unit } from '../../text/units.ts';
import { type Ink, stroke } from '../ink.ts';

/** Side of the grid's squares, mm: what the reader's ruler has. */
export const gridSide = (units: Unit): number => (units === 'in' ? 2 * millimetres.in : 50);

/** A calibration grid over a whole page, in squares of this side (mm) from its top left corner. */
export const grid = (width: number, height: number, side: number): readonly Ink[] => [
  ...steps(width, side).map((x) => stroke('grid', point(x, 0), point(x, height))),
  ...steps(height, side).map((y) => stroke('grid', point(0, y), point(width, y))),
];

const steps = (length: number, side: number): readonly number[] =>
  Array.from({ length: Math.floor(length / side) + 1 }, (_, i) => i * side);
