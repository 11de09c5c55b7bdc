/** A length for the eye: whole millimetres. */
export const wholeMm = (mm: number): string => `${Math.round(mm)} mm`;

/** A width that is set on a machine or a gauge: at most one decimal. */
export const fineMm = (mm: number): string => `${Math.round(mm * 10) / 10} mm`;

/** A ratio such as `1.9 : 1`. */
export const ratioWords = (ratio: number): string => `${Math.round(ratio * 100) / 100} : 1`;

/** The first letter made a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
