/** Pieces told apart: light enough for black lines on them, and apart for the colour-blind (Okabe & Ito, 2008, paled). */
const tints = ['#cfe3f3', '#f8e3b8', '#c3e6da', '#f7f3bd', '#c4d5e6', '#f3d0b8', '#ecd3e3'] as const;

/** A tint for each name: the same for both sides of a piece. */
export const pieceTints = (names: readonly string[]): ReadonlyMap<string, string> =>
  new Map([...new Set(names)].map((name, i) => [name, tints[i % tints.length] as string]));
