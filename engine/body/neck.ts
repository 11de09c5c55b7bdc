import { commonPractice } from '../sources.ts';

/**
 * The numbers of the neck as rows of a table of rules, each with its unit, words and source: drafts draw by them, and
 * lengths are estimated by them.
 */
export const neckNumbers = {
  girthParts: [
    6,
    'count',
    'half the back neck is the neck base girth divided by this',
    'a sixth of the neck girth: L. I. Baldt, Clothing for Women, 1916',
  ],
  beyond: [5, 'mm', 'and so much wider, so that it lies at the neck base', commonPractice],
  widthParts: [
    3,
    'count',
    'the side neck lies above the back neck point by that width divided by this',
    'a third of the width: Bunka draft, from memory',
  ],
} as const;

/** Half the back neck, from centre back to side neck, mm. */
export const backNeckWidth = (neckBaseGirth: number): number =>
  neckBaseGirth / neckNumbers.girthParts[0] + neckNumbers.beyond[0];

/** How far the side neck lies above the back neck point, mm. */
export const backNeckRise = (neckBaseGirth: number): number =>
  backNeckWidth(neckBaseGirth) / neckNumbers.widthParts[0];
