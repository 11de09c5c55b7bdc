/** The invented bodies of a small theatre's costume workshop, whose files lie beside the page. */
export const invented = [
  'leading lady',
  'understudy',
  'wardrobe mistress',
  'stage manager',
  'prompter',
  'scene painter',
  'lighting operator',
  'front of house',
] as const;
