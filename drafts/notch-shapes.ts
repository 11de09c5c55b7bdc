import { bandTable, claim } from '../engine/pattern/band-table.ts';
import type { ShapeClaim } from '../engine/pattern/shape.ts';
import { commonPractice } from '../engine/sources.ts';

/** How deep the notches of any garment may be cut. */
export const notchBands = bandTable({
  deepest: ['deepest notch', undefined, 4, 'mm', commonPractice, 'bound'],
  ofAllowance: ['deepest notch, of its allowance', undefined, 0.5, 'share', commonPractice, 'bound'],
});

const outside = 'a notch cut so deep weakens the seam, and leaves nothing to let out';

/** How deep the notches of a garment are cut. */
export const notchShapes: readonly ShapeClaim[] = [
  claim(notchBands.deepest, { kind: 'notch depth', say: 'mm' }, outside),
  claim(notchBands.ofAllowance, { kind: 'notch depth', say: 'share' }, outside),
];
