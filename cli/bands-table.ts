import type { ShapeReport } from '../engine/checks/report.ts';
import { type Column, fixed, table } from './table.ts';

/** A garment's shapes beside the bands a pattern cutter expects, and why a figure may lie outside its band. */
export const bandsTable = (shapes: readonly ShapeReport[]): string =>
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

/** How many shapes lie in their bands, and which do not. */
export function countShapes(shapes: readonly ShapeReport[]): string {
  const outside = shapes.filter(({ ok }) => !ok).map(({ name }) => name);
  const within = `${shapes.length - outside.length} of ${shapes.length} in their bands`;
  return outside.length === 0 ? within : `${within}; outside: ${outside.join(', ')}`;
}

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
