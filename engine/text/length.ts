import { fixed, plainFigure, significant } from './figure.ts';
import { millimetres, type Unit } from './units.ts';

/** Parts of an inch on a ruler: as fine as a length is said that decides a notch or an allowance, and one that does not. */
export const [SIXTEENTHS, EIGHTHS] = [16, 8] as const;

/** From this length on (in) eighths are fine enough. */
const LONG = 10;

/** What is less than half a sixteenth (in) is no fraction any more. */
const LEAST = 1 / 32;

/** Digits behind the point that a unit is said with where it is not said in fractions: a tenth of a mm each. */
const digits = { mm: 1, cm: 2 } as const;

/** A figure has so many decimals, or lies on a part of an inch, if it does so but for rounding. */
const AS_WRITTEN = 1e-6;

/** The finest parts in which a length (mm) is said in inches: sixteenths, but eighths where it is long. */
export const partsFor = (mm: number): number => (Math.abs(mm) < LONG * millimetres.in ? SIXTEENTHS : EIGHTHS);

/**
 * A length (mm) as a figure in a unit, without its name: mm to a tenth, cm to a hundredth, inches in fractions of `parts`
 * (`12 3/8`), or with two figures behind the point where it is shorter than any.
 */
export function lengthFigure(mm: number, unit: Unit, parts = partsFor(mm)): string {
  if (unit === 'in') return inches(mm / millimetres.in, parts);
  return plainFigure(mm / millimetres[unit], digits[unit]);
}

/** The same with the unit behind it: `12 3/8 in`. */
export const lengthIn = (mm: number, unit: Unit, parts = partsFor(mm)): string =>
  `${lengthFigure(mm, unit, parts)} ${unit}`;

/** A length (mm) as a cell of a table: mm with one decimal or with so many, cm with one more, inches in fractions. */
export const lengthCell = (mm: number, unit: Unit, decimals = 1, parts = partsFor(mm)): string =>
  unit === 'in' ? inches(mm / millimetres.in, parts) : decimalCell(mm, unit, decimals);

/** A length (mm) that is meant to be nothing, such as a mismatch: always with so many decimals, cm with one more. */
export const decimalCell = (mm: number, unit: Unit, decimals: number): string =>
  fixed(mm / millimetres[unit], unit === 'cm' ? decimals + 1 : decimals);

/**
 * A figure in the unit of a file of measurements, with it: at most two decimals, but inches in fractions, unless they were
 * written with decimals that no ruler has.
 */
export function inUnit(value: number, unit: string): string {
  const whole = (number: number): boolean => Math.abs(number - Math.round(number)) < AS_WRITTEN;
  const decimal = whole(value * 100) && !whole(value * SIXTEENTHS);
  return `${unit === 'in' && !decimal ? inches(value, SIXTEENTHS) : plainFigure(value, 2)} ${unit}`;
}

/** Digits behind the point beyond which an inch is nothing to a dressmaker. */
const FINEST = 4;

function inches(value: number, parts: number): string {
  if (Math.abs(value) < LEAST) return plainFigure(significant(value, 2), FINEST);
  return Number.isSafeInteger(Math.round(value * parts)) ? fraction(value, parts) : String(value);
}

/** A number in whole and lowest parts, parts being a power of two: `36 1/4`, `-3/8`. */
function fraction(value: number, parts: number): string {
  let [above, below] = [Math.round(Math.abs(value) * parts), parts];
  if (above === 0) return '0';
  while (above % 2 === 0 && below > 1) [above, below] = [above / 2, below / 2];
  const [whole, rest] = [Math.floor(above / below), above % below];
  const figure = [...(whole > 0 ? [whole] : []), ...(rest > 0 ? [`${rest}/${below}`] : [])].join(' ');
  return value < 0 ? `-${figure}` : figure;
}

/** A text in which no line may end between the whole and the fraction of a figure. */
export const unbroken = (text: string): string => text.replace(/(?<=\d) (?=\d+\/\d)/g, '\u00a0');
