/*
 * How numbers are written in words and tables; lengths in the reader's unit are `length.ts`, and the digits of a drawing
 * `render/path-data.ts`. In a sentence a length has “mm” behind it (`with-lengths-in.ts`).
 */

/** A number with so many decimals, and no minus before a zero. */
export const fixed = (value: number, decimals: number): string =>
  value.toFixed(decimals).replace(/^-(?=[0.]*$)/, '');

/** A number with at most so many decimals, halves up, and no minus before a zero; what is too large for any stays as it is. */
export function plainFigure(value: number, decimals: number): string {
  const parts = Math.round(value * 10 ** decimals);
  return String(Number.isSafeInteger(parts) ? parts / 10 ** decimals + 0 : value);
}

/** A number rounded to so many significant figures. */
export const significant = (value: number, figures: number): number => Number(value.toPrecision(figures));

/** A number rounded to so many decimals, without what doubles leave behind. */
export const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** A number as a dressmaker reads it: at most one decimal. */
export const figure = (value: number): string => plainFigure(value, 1);

/** An angle in degrees as a dressmaker reads it, from radians. */
export const degrees = (angle: number): string => `${figure((angle * 180) / Math.PI)}°`;

/** A length as a message tells it: mm to two decimals or to so many, without trailing noughts. */
export const inMm = (length: number, decimals = 2): string => `${rounded(length, decimals)} mm`;

/** A length as a message tells it among others: mm, always with so many decimals. */
export const fixedMm = (length: number, decimals: number): string => `${fixed(length, decimals)} mm`;

/** An angle as a message tells it, from degrees: three figures. */
export const inDegrees = (angle: number): string => `${significant(angle, 3)}°`;
