/** A length as a message tells it: mm to two decimals, without trailing noughts. */
export const inMm = (length: number): string => `${Number(length.toFixed(2))} mm`;

/** An angle in degrees as a message tells it, from degrees. */
export const inDegrees = (angle: number): string => `${Number(angle.toFixed(2))}°`;

/** Names as a sentence lists them: `a`, `a and b`, `a, b and c`. */
export function listed(names: readonly string[]): string {
  const different = [...new Set(names)];
  const last = different.at(-1) ?? '';
  return different.length < 2 ? last : `${different.slice(0, -1).join(', ')} and ${last}`;
}
