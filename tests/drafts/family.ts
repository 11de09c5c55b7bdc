/** A garment and how it is chosen. */
export type Styled = readonly [garment: string, styling?: Readonly<Record<string, string>>];

/** The bodices that shoulder, front and princess line make, each with another neckline; and the trial bodice. */
export const family = {
  'gathered front, straps': ['bodice'],
  'gathered front, whole shoulders': ['bodice', { shoulder: 'whole' }],
  'plain front, straps': ['bodice', { front: 'plain', backNeckline: 'pointed' }],
  'parted front, whole shoulders': [
    'bodice',
    { shoulder: 'whole', front: 'plain', centreFront: 'parted', neckline: 'sweetheart' },
  ],
  'princess from the neckline': [
    'bodice',
    { shoulder: 'whole', front: 'plain', princess: 'neckline', neckline: 'pointed' },
  ],
  'princess from the armhole': ['bodice', { shoulder: 'whole', front: 'plain', princess: 'armhole' }],
  'dress with plain sleeves': [
    'dress',
    { shoulder: 'whole', front: 'plain', neckline: 'round', sleeve: 'plain', inside: 'faced' },
  ],
  'trial bodice': ['trial', { sleeve: 'plain' }],
} as const satisfies Readonly<Record<string, Styled>>;

export const styleNames = Object.keys(family) as readonly (keyof typeof family)[];
