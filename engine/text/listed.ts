/** Names as a sentence lists them: `a`, `a and b`, `a, b and c`. */
export function listed(names: readonly string[]): string {
  const different = [...new Set(names)];
  const last = different.at(-1) ?? '';
  return different.length < 2 ? last : `${different.slice(0, -1).join(', ')} and ${last}`;
}
