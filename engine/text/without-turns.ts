/** Marks, embeddings, overrides and isolates of the bidirectional algorithm (Unicode Standard Annex 9). */
const turns = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;

/**
 * Text without signs that turn the way of writing round: with them a name from a file could show the words after it in
 * another order than they are in. Letters of all scripts keep their own way.
 */
export const withoutTurns = (text: string): string => text.replace(turns, '');
