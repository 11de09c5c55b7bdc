/** A number as a dressmaker reads it: at most one decimal. In a sentence a length has “mm” behind it (`with-lengths-in.ts`). */
export const figure = (value: number): string => String(Math.round(value * 10) / 10);

/** An angle in degrees as a dressmaker reads it, from radians. */
export const degrees = (angle: number): string => `${figure((angle * 180) / Math.PI)}°`;

/** A length as a message tells it: mm to two decimals, without trailing noughts. */
export const inMm = (length: number): string => `${Number(length.toFixed(2))} mm`;

/** An angle as a message tells it, from degrees: three figures. */
export const inDegrees = (angle: number): string => `${Number(angle.toPrecision(3))}°`;
