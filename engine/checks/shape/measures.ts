import type { ShapeMeasure, ShapeUnit } from '../../pattern/shape.ts';
import { acrossAt } from './across.ts';
import { capTop } from './cap-top.ts';
import { dip } from './dip.ts';
import { fullestPlace } from './fullest.ts';
import { partedMost } from './laid-on.ts';
import { grainOffUpright, lean } from './lean.ts';
import { summedLength } from './length.ts';
import type { Measured, MeasureOf } from './measured.ts';
import { deepestNotch } from './notch-depth.ts';
import { notchHeight } from './notch-height.ts';
import { sewnInAngle } from './sewn-in-angle.ts';
import { hollowOfTaper } from './taper.ts';
import { tightestBend } from './tightest-bend.ts';

/** What a measure found: a figure, and the piece it stands on where the measure looked at them all. */
interface FoundFigure {
  readonly value: number;
  readonly piece?: string | undefined;
}

/** How one kind of figure is found, and its unit. A figure that names something which is not there is undefined. */
interface Instrument<Kind extends ShapeMeasure['kind']> {
  readonly unit: ShapeUnit | ((measure: MeasureOf<Kind>) => ShapeUnit);
  readonly take: (measure: MeasureOf<Kind>, on: Measured) => number | FoundFigure | undefined;
}

export const instruments: { readonly [Kind in ShapeMeasure['kind']]: Instrument<Kind> } = {
  drafted: { unit: ({ unit }) => unit, take: ({ value }) => value },
  'laid on': { unit: 'mm', take: partedMost },
  'tightest bend': { unit: 'mm', take: tightestBend },
  length: { unit: 'mm', take: summedLength },
  'notch height': { unit: 'share', take: notchHeight },
  'cap top': { unit: 'mm', take: capTop },
  dip: { unit: 'mm', take: dip },
  lean: { unit: 'degrees', take: lean },
  grain: { unit: 'degrees', take: grainOffUpright },
  taper: { unit: 'mm', take: hollowOfTaper },
  fullest: { unit: 'mm', take: fullestPlace },
  'sewn-in angle': { unit: 'degrees', take: sewnInAngle },
  across: { unit: 'mm', take: acrossAt },
  'notch depth': { unit: ({ say }) => say, take: deepestNotch },
};

/** Measures one shape on the pieces; undefined where it names a part that is not there. */
export function measureShape<Kind extends ShapeMeasure['kind']>(
  measure: MeasureOf<Kind> & { readonly kind: Kind },
  on: Measured,
): (FoundFigure & { readonly unit: ShapeUnit }) | undefined {
  const { unit, take }: Instrument<Kind> = instruments[measure.kind];
  const found = take(measure, on);
  if (found === undefined) return undefined;
  const { value, piece }: FoundFigure = typeof found === 'number' ? { value: found } : found;
  return { value, piece, unit: typeof unit === 'function' ? unit(measure) : unit };
}
