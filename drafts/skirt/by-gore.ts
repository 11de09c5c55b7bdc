/** The gores of half a skirt, from centre front to centre back. */
export const goreNames = ['centre front', 'side front', 'side back', 'centre back'] as const;

export type GoreName = (typeof goreNames)[number];

/** One of something for each gore. */
export type ByGore<T> = Readonly<Record<GoreName, T>>;

/** One for each gore, in their order. */
export const byGore = <T>(of: (name: GoreName) => T): ByGore<T> => ({
  'centre front': of('centre front'),
  'side front': of('side front'),
  'side back': of('side back'),
  'centre back': of('centre back'),
});

/** The seams of half a skirt, from centre front to centre back. */
export type GoreSeam = 'centre front' | 'front princess' | 'side' | 'back princess' | 'centre back';

/** The seams of each gore, left and right as drawn. The back gores are drawn like the front, centre on the left. */
export const seamsOf: ByGore<readonly [left: GoreSeam, right: GoreSeam]> = {
  'centre front': ['centre front', 'front princess'],
  'side front': ['front princess', 'side'],
  'side back': ['back princess', 'side'],
  'centre back': ['centre back', 'back princess'],
};

/** The gores at the centres are drawn as halves. */
export const isHalf = (gore: GoreName): boolean => gore === 'centre front' || gore === 'centre back';
