/** R12 takes no more characters than this in one text, attribute or string of extended data. */
const MOST = 255;

/** A character, or a run of percent signs, as the format writes it: UTF-16 by its units. */
function coded(part: string): string {
  if (part.startsWith('%%')) return part.replaceAll('%', '%%%');
  if (part === '^') return '^ ';
  if (/^[ -[\]-~]$/.test(part)) return part;
  const units = Array.from({ length: part.length }, (_, i) => part.charCodeAt(i));
  return units
    .map((unit) =>
      unit < 0x20
        ? `^${String.fromCharCode(unit + 0x40)}`
        : `\\U+${unit.toString(16).toUpperCase().padStart(4, '0')}`,
    )
    .join('');
}

/**
 * Text as DXF holds it in one line of ASCII: control characters and the caret in caret notation; the backslash, which would
 * begin a code, and all that is not ASCII as `\U+XXXX`; percent signs in a row, of which two would begin a code, as `%%%`
 * each. What is longer than R12 takes is cut off after a whole character.
 */
export function escaped(text: string): string {
  let kept = '';
  for (const part of text.match(/%{2,}|[\s\S]/gu) ?? []) {
    const own = coded(part);
    if (kept.length + own.length > MOST) break;
    kept += own;
  }
  return kept;
}
