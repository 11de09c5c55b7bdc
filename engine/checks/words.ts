/** A length as a message tells it: mm to two decimals, without trailing noughts. */
export const inMm = (length: number): string => `${Number(length.toFixed(2))} mm`;

/** An angle as a message tells it, from degrees: three figures. */
export const inDegrees = (angle: number): string => `${Number(angle.toPrecision(3))}°`;

/** Names as a sentence lists them: `a`, `a and b`, `a, b and c`. */
export function listed(names: readonly string[]): string {
  const different = [...new Set(names)];
  const last = different.at(-1) ?? '';
  return different.length < 2 ? last : `${different.slice(0, -1).join(', ')} and ${last}`;
}
