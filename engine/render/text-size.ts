/**
 * Width of a character as a share of the font size: a little more than the average of common sans-serif faces
 * (about 0.5), so that the room kept for a text is never too small. Measured by eye, no source.
 */
const characterWidth = 0.56;

/** Room to keep for a line of text set in a font of this size, mm. */
export const textWidth = (text: string, size: number): number =>
  Array.from(text).length * size * characterWidth;
