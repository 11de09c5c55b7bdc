import type { MeasurementName } from '../body/body.ts';
import { fixed, plainFigure } from '../text/figure.ts';

/** What a number counts: lengths in mm, angles in radians, shares and plain numbers, and so much for each mm. */
export type QuantityUnit = 'mm' | 'rad' | 'ratio' | 'per mm';

/** A number of a draft that knows its unit, its name, and where it came from. Plain data. */
export interface Quantity<U extends QuantityUnit = QuantityUnit> {
  readonly value: number;
  readonly unit: U;
  readonly name: string;
  readonly origin: Origin;
}

/** What stands in a place of a sentence: a quantity, or words of a name. */
export type Given = Quantity | string;

/** What a step was found from: a quantity, or an earlier step that drew something and gave no number. */
export type Ground = Pick<Quantity, 'name' | 'origin'> & Partial<Pick<Quantity, 'value' | 'unit'>>;

export type Mm = Quantity<'mm'>;
export type Angle = Quantity<'rad'>;
export type Ratio = Quantity<'ratio'>;

/** Where a number came from: what was measured, chosen, pinned at a fitting, ruled by the trade, or found before. */
export type Origin =
  | { readonly kind: 'measurement'; readonly measurement: MeasurementName }
  | { readonly kind: 'choice' }
  | { readonly kind: 'fitting' }
  | { readonly kind: 'rule'; readonly id: string; readonly source: string }
  /** An earlier step, by its number. */
  | { readonly kind: 'step'; readonly number: number };

/** Units as rules and choices write them. */
export type WrittenUnit = 'mm' | 'share' | 'degrees' | 'ratio' | 'count' | 'per mm';

/** The unit of a quantity from the unit it is written in. */
export type UnitOf<W extends WrittenUnit> = W extends 'mm' | 'per mm'
  ? W
  : W extends 'degrees'
    ? 'rad'
    : 'ratio';

const units: { readonly [W in WrittenUnit]: UnitOf<W> } = {
  mm: 'mm',
  'per mm': 'per mm',
  degrees: 'rad',
  share: 'ratio',
  ratio: 'ratio',
  count: 'ratio',
};

/** Whether something is a unit that numbers may be written in. */
export const isWrittenUnit = (unit: unknown): unit is WrittenUnit =>
  typeof unit === 'string' && Object.hasOwn(units, unit);

/** A quantity from a number as it is written: degrees become radians. */
export const quantity = <W extends WrittenUnit>(
  value: number,
  written: W,
  name: string,
  origin: Origin,
): Quantity<UnitOf<W>> => ({
  value: written === 'degrees' ? (value * Math.PI) / 180 : value,
  unit: units[written],
  name,
  origin,
});

const DEGREES = 180 / Math.PI;

/** The value in the unit it is written in: mm, degrees, or the plain number. */
export const writtenValue = ({ value, unit }: Pick<Quantity, 'value' | 'unit'>): number =>
  unit === 'rad' ? value * DEGREES : value;

/**
 * A quantity as a sentence says it to a dressmaker: lengths and angles to a tenth, plain numbers to a thousandth; what
 * was ruled or chosen exactly as it was written. An angle carries its sign, a length does not.
 */
export function written({ value, unit, origin }: Pick<Quantity, 'value' | 'unit' | 'origin'>): string {
  const exact = origin.kind === 'rule' || origin.kind === 'choice';
  const decimals = exact ? 9 : unit === 'mm' || unit === 'rad' ? 1 : 3;
  const figure = plainFigure(writtenValue({ value, unit }), decimals);
  return unit === 'rad' ? `${figure}°` : figure;
}

/** Parts of a unit that are kept for a program: their rounding is far below 1e-6 mm, degrees, or of the plain number. */
const keptParts: Readonly<Record<QuantityUnit, number>> = {
  mm: 1e10,
  rad: 1e11,
  ratio: 1e12,
  'per mm': 1e12,
};

/** JavaScript writes smaller numbers with an exponent. */
const SHORTEST_PLAIN = 1e-6;

/** A quantity for another program, with enough digits to calculate on with; degrees marked. */
export function exactly(value: number, unit: QuantityUnit): string {
  const parts = keptParts[unit];
  const figure = Math.round(writtenValue({ value, unit }) * parts) / parts;
  const digits = Math.abs(figure) < SHORTEST_PLAIN && figure !== 0 ? fixed(figure, 12) : `${figure}`;
  return unit === 'rad' ? `${digits}°` : digits;
}
