/** Where a rule is everybody's and nobody's. */
export const commonPractice = 'common practice, no source';

/** Where a figure is what cutters say, and no book was at hand. */
export const fromMemory = 'from memory, for a regular adult in a fitted dress of woven cloth';
