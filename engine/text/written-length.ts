import { millimetres, numberIn } from './units.ts';

/** Units as they are written behind a length, in mm; the yard is exactly 914.4 mm (the agreement of 1959 again). */
const units: Readonly<Record<string, number>> = {
  ...millimetres,
  m: 1000,
  ft: 304.8,
  yd: 914.4,
  '"': millimetres.in,
  '″': millimetres.in,
};

const written = new RegExp(`^\\s*([+-]?)\\s*(.*?)\\s*(${Object.keys(units).join('|')})?\\s*$`, 's');

/**
 * A number as it may be written, whole, decimal with point or comma, or a fraction, and signed; with a unit of length behind
 * it in mm. Nothing where it is none: `12.7`, `12,7`, `1/2 in`, `1 1/4"`, `-2 cm`, `2,5 m`,
 * `1 3/8 yd`.
 */
export function writtenLength(
  text: string,
): { readonly value: number; readonly withUnit: boolean } | undefined {
  const [, sign = '', figure = '', unit] = written.exec(text) ?? [];
  const number = numberIn(figure);
  if (number === undefined) return undefined;
  const value = (sign === '-' ? -number : number) * (unit === undefined ? 1 : (units[unit] ?? 1));
  return { value, withUnit: unit !== undefined };
}
