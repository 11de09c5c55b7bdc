import type { Measure, ShapeUnit } from '../../pattern/shape.ts';
import { partedMost } from './laid-on.ts';
import { summedLength } from './length.ts';
import type { Measured, MeasureOf } from './measured.ts';
import { tightestBend } from './tightest-bend.ts';

/** How one kind of figure is found, and its unit. A figure that names something which is not there is undefined. */
interface Instrument<Kind extends Measure['kind']> {
  readonly unit: ShapeUnit | ((measure: MeasureOf<Kind>) => ShapeUnit);
  readonly take: (measure: MeasureOf<Kind>, on: Measured) => number | undefined;
}

const instruments: { readonly [Kind in Measure['kind']]: Instrument<Kind> } = {
  drafted: { unit: ({ unit }) => unit, take: ({ value }) => value },
  'laid on': { unit: 'mm', take: partedMost },
  'tightest bend': { unit: 'mm', take: tightestBend },
  length: { unit: 'mm', take: summedLength },
};

/** Measures one shape on the pieces; undefined where it names a part that is not there. */
export function measureShape<Kind extends Measure['kind']>(
  measure: MeasureOf<Kind> & { readonly kind: Kind },
  on: Measured,
): { readonly value: number; readonly unit: ShapeUnit } | undefined {
  const { unit, take }: Instrument<Kind> = instruments[measure.kind];
  const value = take(measure, on);
  return value === undefined ? undefined : { value, unit: typeof unit === 'function' ? unit(measure) : unit };
}
