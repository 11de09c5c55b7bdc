import type { Notion } from '../../pattern/garment.ts';

/** A length for the eye: whole millimetres, kept on one line with their unit. */
export const wholeMm = (mm: number): string => `${Math.round(mm)}\u00a0mm`;

/** A width that is set on a machine or a gauge: at most one decimal. */
export const fineMm = (mm: number): string => `${Math.round(mm * 10) / 10}\u00a0mm`;

/** A ratio such as `1.9 : 1`, kept on one line. */
export const ratioWords = (ratio: number): string => `${Math.round(ratio * 100) / 100}\u00a0:\u00a01`;

/** How many of a notion, and how long where it is bought by length. */
export const quantity = ({ count, length }: Notion): string =>
  length > 0 ? `${count} × ${wholeMm(length)}` : String(count);

/** The first letter made a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
