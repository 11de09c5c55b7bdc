import tables from '../../measurements/en-13402.json' with { type: 'json' };

/** The letters of cups from the smallest up (EN 13402). */
export const cupLetters: readonly string[] = Object.keys(tables.cupsAbove);
