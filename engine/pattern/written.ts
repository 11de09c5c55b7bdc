/** A number as a dressmaker reads it: at most one decimal. */
export const figure = (value: number): string => String(Math.round(value * 10) / 10);

/** An angle in degrees as a dressmaker reads it, from radians. */
export const degrees = (angle: number): string => `${figure((angle * 180) / Math.PI)}°`;
