import { millimetres, numberIn } from './units.ts';

/** Units as they are written behind a length, in mm. */
const units: Readonly<Record<string, number>> = { ...millimetres, '"': millimetres.in, '″': millimetres.in };

const written = /^\s*([+-]?)\s*(.*?)\s*(mm|cm|in|"|″)?\s*$/s;

/**
 * A number as it may be written, whole, decimal with point or comma, or a fraction, and signed; with a unit of length behind
 * it in mm. Nothing where it is none: `12.7`, `12,7`, `1/2 in`, `1 1/4"`, `-2 cm`.
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
