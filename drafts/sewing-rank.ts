/**
 * The order in which the dress is sewn: what is sewn earlier runs through a corner, and its allowance ends square
 * there, so that the allowances of neighbours lie flush when the later line is sewn across them.
 */
export const sewingRank = {
  underBust: 1,
  princess: 2,
  strap: 3,
  side: 4,
  sleeveSeam: 4,
  armhole: 5,
  waist: 6,
  centreBack: 7,
  neckline: 8,
  hem: 9,
  fold: 10,
} as const;
