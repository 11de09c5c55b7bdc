import { type FittedSeam, type FittingChange, takenIn } from '../../engine/body/fitting.ts';
import type { ByGore } from './gore-sizes.ts';

/**
 * What a fitting took from each gore at the waist or the hip, mm, half gores at the centres: the seams run on from
 * the bodice.
 */
export function takenFromGores(changes: readonly FittingChange[], level: 'waist' | 'hip'): ByGore {
  const at = (seam: FittedSeam): number => takenIn(changes, seam, level);
  return {
    'centre front': at('front princess seam'),
    'side front': at('front princess seam') + at('side seam'),
    'side back': at('side seam') + at('back princess seam'),
    'centre back': at('back princess seam') + at('centre back seam'),
  };
}

/** What all gores give together, left and right, mm. */
export const takenFromGirth = (taken: ByGore): number =>
  2 * Object.values(taken).reduce((sum, each) => sum + each, 0);
