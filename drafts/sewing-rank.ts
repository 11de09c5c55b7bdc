/**
 * The order in which the dress is sewn: what is sewn earlier runs through a corner, and its allowance ends square
 * there, so that the allowances of neighbours lie flush when the later line is sewn across them.
 */
export const sewingRank = {
  underBust: 1,
  strapShoulder: 1,
  strapTube: 2,
  princess: 2,
  strap: 3,
  shoulder: 3,
  side: 4,
  sleeveSeam: 4,
  armhole: 5,
  waist: 6,
  centreBack: 7,
  facingEdge: 8,
  neckline: 9,
  hem: 10,
  fold: 11,
  felled: 12,
} as const;
