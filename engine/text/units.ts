/** The units a file of measurements may be written in. The shoulder slope is always in degrees. */
export const unitNames = ['cm', 'in', 'mm'] as const;

export type Unit = (typeof unitNames)[number];

export const unitWords: Readonly<Record<Unit, string>> = {
  cm: 'centimetres',
  in: 'inches',
  mm: 'millimetres',
};

/** Millimetres in one unit; the inch is exactly 25.4 mm (international yard and pound agreement, 1959). */
export const millimetres: Readonly<Record<Unit, number>> = { mm: 1, cm: 10, in: 25.4 };

/** How far apart the marks of a tape lie, mm: millimetres, or sixteenths of an inch. */
export const tapeMarks: Readonly<Record<Unit, number>> = { mm: 1, cm: 1, in: 25.4 / 16 };

/** A number as it may be written: `36`, `36.25`, `36,25`, `1/2`, `36 1/4` or `36-1/4`. */
export const writtenNumber =
  /^\s*(?:(\d{1,6}(?:[.,]\d{1,9})?)|(?:(\d{1,6})(?:\s+|\s*-\s*))?(\d{1,4})\/([1-9]\d{0,3}))\s*$/;

/**
 * The number written in a text, or nothing when it is none. A fraction of one or more is none: `361/4` is `36 1/4`
 * with its gap forgotten, and not ninety and a quarter.
 */
export function numberIn(text: string): number | undefined {
  const found = writtenNumber.exec(text);
  if (!found) return undefined;
  const [, plain, whole = '0', above, below] = found;
  if (plain !== undefined) return Number(plain.replace(',', '.'));
  const part = Number(above) / Number(below);
  return part < 1 ? Number(whole) + part : undefined;
}

/** How a unit is named where it is said once for many figures: "lengths in inches". */
export const unitLabel: Readonly<Record<Unit, string>> = { mm: 'mm', cm: 'cm', in: 'inches' };
