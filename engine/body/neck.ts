/**
 * Half the back neck, from centre back to side neck, mm: a sixth of the neck girth (L. I. Baldt, Clothing for
 * Women, 1916) and half a centimetre so that it lies at the neck base
 * (common practice, no source).
 */
export const backNeckWidth = (neckBaseGirth: number): number => neckBaseGirth / 6 + 5;

/** How far the side neck lies above the back neck point, mm: a third of the width (Bunka draft, from memory). */
export const backNeckRise = (neckBaseGirth: number): number => backNeckWidth(neckBaseGirth) / 3;
