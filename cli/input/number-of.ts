import { unusable } from './unusable.ts';

/** A decimal number, with a point or a comma; NaN where a text is none. */
export const decimalIn = (text: string): number =>
  text.trim() === '' ? Number.NaN : Number(text.replace(',', '.'));

/** A number within limits. Throws `Unusable` where it is none. */
export function numberOf(option: string, text: string, min: number, max: number): number {
  const value = decimalIn(text);
  if (!(value >= min && value <= max))
    throw unusable('number-not-understood', option, `${option} takes a number from ${min} to ${max}.`);
  return value;
}
