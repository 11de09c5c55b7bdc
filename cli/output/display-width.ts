/** Signs that stand over the one before them, and take no room of their own. */
const above = /\p{Mn}|\p{Me}|\p{Cf}/u;

/** Signs that take two columns: the scripts of East Asia, their full-width forms, and pictures (Unicode Standard Annex 11). */
const wide =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1FAFF}\u{20000}-\u{3FFFD}]/u;

/** How many columns of a terminal a text takes. */
export const displayWidth = (text: string): number =>
  [...text].reduce((sum, sign) => sum + (above.test(sign) ? 0 : wide.test(sign) ? 2 : 1), 0);

/** A text with blanks behind it, or before it, up to so many columns. */
export const padded = (text: string, width: number, side: 'left' | 'right'): string => {
  const blanks = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return side === 'left' ? text + blanks : blanks + text;
};
