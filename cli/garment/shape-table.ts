import type { ShapeReport } from '../../engine/checks/report.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import type { Reader } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';

/** Shapes of a garment beside the bands a pattern cutter expects, and why a figure may lie outside its band. */
export const shapeTable = (shapes: readonly ShapeReport[], { units, columns: width }: Reader): string =>
  table(
    columns,
    shapes.map((shape) => [
      shape.name,
      shape.piece,
      shapeFigure(shape.value, shape, units),
      bandWords(shape, units),
      shape.ok ? '' : `${shape.bound ? 'NOT TRUE' : 'outside'}: ${withLengthsIn(shape.outside, units)}`,
    ]),
    width,
  );

/** How many shapes lie in their bands. */
export const countShapes = (shapes: readonly ShapeReport[]): string =>
  shapes.length === 0 ? 'none' : `${shapes.filter(({ ok }) => ok).length} of ${shapes.length} in their bands`;

/** The band of a shape in words. */
export function bandWords({ low, high, unit }: ShapeReport, units: Unit): string {
  const bound = (value: number): string => shapeFigure(value, { unit }, units);
  if (low === undefined) return high === undefined ? '' : `at most ${bound(high)}`;
  return high === undefined ? `at least ${bound(low)}` : `${bound(low)} to ${bound(high)}`;
}

/** A figure of a shape in its unit. */
export function shapeFigure(value: number, { unit }: Pick<ShapeReport, 'unit'>, units: Unit): string {
  if (!Number.isFinite(value)) return 'none';
  if (unit === 'mm') return lengthCell(value, units);
  return unit === 'degrees' ? `${fixed(value, 1)}°` : fixed(value, 2);
}

const columns: readonly Column[] = [
  { title: 'shape' },
  { title: 'piece' },
  { title: 'measured', right: true },
  { title: 'band' },
  { title: '' },
];
