/** What keeps raw edges from fraying: in the words of a list, and as an order within a sentence. */
interface Finish {
  readonly says: string;
  readonly order: string;
}

/**
 * How the raw edges of a seam, or the raw edge that is turned up or under, are finished: each by itself where the seam is
 * pressed open, both together where it is pressed to one side (common practice, no source).
 */
export const seamFinishes = {
  overcast: { says: 'each edge overcast', order: 'overcast each edge by itself' },
  'overcast together': { says: 'both edges overcast together', order: 'overcast the edges together' },
  pinked: { says: 'each edge pinked', order: 'pink each edge' },
  'pinked together': { says: 'both edges pinked together', order: 'pink the edges together' },
  bound: { says: 'each edge bound', order: 'bind each edge with a narrow bias strip' },
  'bound together': {
    says: 'both edges bound together',
    order: 'bind the edges together with a narrow bias strip',
  },
  raw: { says: 'left raw', order: 'leave the edges raw' },
  enclosed: { says: 'left raw, enclosed', order: 'leave the edges raw' },
  graded: {
    says: 'trimmed in steps and turned in, enclosed',
    order: 'trim the allowances in steps, so that they lie thin once they are turned in',
  },
  turned: { says: 'turned under and stitched', order: 'turn the raw edge under and stitch it' },
  felled: { says: 'turned under and felled by hand', order: 'turn the raw edge under and fell it by hand' },
} as const satisfies Readonly<Record<string, Finish>>;

export type SeamFinish = keyof typeof seamFinishes;

export const finishNames = Object.keys(seamFinishes) as readonly SeamFinish[];
