import type { ShapeReport } from '../engine/checks/report.ts';
import { type Column, fixed, table } from './table.ts';

/** Shapes of a garment beside the bands a pattern cutter expects, and why a figure may lie outside its band. */
export const shapeTable = (shapes: readonly ShapeReport[]): string =>
  table(
    columns,
    shapes.map((shape) => [
      shape.name,
      shape.piece,
      shown(shape.value, shape),
      unitWord[shape.unit],
      band(shape),
      shape.ok ? '' : `${shape.bound ? 'NOT TRUE' : 'outside'}: ${shape.outside}`,
    ]),
  );

/** How many shapes lie in their bands. */
export const countShapes = (shapes: readonly ShapeReport[]): string =>
  shapes.length === 0 ? 'none' : `${shapes.filter(({ ok }) => ok).length} of ${shapes.length} in their bands`;

function band({ low, high, unit }: ShapeReport): string {
  if (low === undefined) return high === undefined ? '' : `at most ${shown(high, { unit })}`;
  return high === undefined
    ? `at least ${shown(low, { unit })}`
    : `${shown(low, { unit })} to ${shown(high, { unit })}`;
}

const shown = (value: number, { unit }: Pick<ShapeReport, 'unit'>): string =>
  Number.isFinite(value) ? fixed(value, unit === 'mm' || unit === 'degrees' ? 1 : 2) : 'none';

const unitWord: Readonly<Record<ShapeReport['unit'], string>> = {
  mm: 'mm',
  degrees: '°',
  share: '',
  ratio: '',
};

const columns: readonly Column[] = [
  { title: 'shape' },
  { title: 'piece' },
  { title: 'measured', right: true },
  { title: '' },
  { title: 'band' },
  { title: '' },
];
