/**
 * Stitch types by their number in ISO 4915, as far as a home machine, an overlocker and a hand needle make them.
 * Classes 100 to 600 and types 301 and 504: a textile course on seams and stitches that quotes the standard; 304
 * from memory.
 */
export const stitchTypes = {
  '200': 'hand stitch',
  '301': 'lockstitch, straight',
  '304': 'lockstitch, zigzag',
  '504': 'overedge, three threads',
} as const;

export type StitchType = keyof typeof stitchTypes;

export const stitchNumbers = Object.keys(stitchTypes) as readonly StitchType[];

/**
 * Seam classes of ISO 4916: how the plies lie to each other (same source). A gathered seam has no class of its own:
 * it is superimposed, with one ply gathered.
 */
export const seamClasses = {
  1: 'superimposed',
  2: 'lapped',
  3: 'bound',
  4: 'flat',
  5: 'decorative',
  6: 'edge finishing',
  7: 'separate item added',
  8: 'single ply',
} as const;

export type SeamClass = keyof typeof seamClasses;
