/** The wearer's own sides, in the order in which they are drawn and listed. */
export const sides = ['right', 'left'] as const;

export type Side = (typeof sides)[number];
