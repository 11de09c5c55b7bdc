import type { ShapeClaim } from '../engine/pattern/shape.ts';

const outside = 'a notch cut so deep weakens the seam, and leaves nothing to let out';

/** How deep the notches of a garment are cut; common practice, no source. */
export const notchShapes: readonly ShapeClaim[] = [
  { kind: 'notch depth', name: 'deepest notch', say: 'mm', high: 4, bound: true, outside },
  {
    kind: 'notch depth',
    name: 'deepest notch, of its allowance',
    say: 'share',
    high: 0.5,
    bound: true,
    outside,
  },
];
