import { type FittedSeam, type FittingChange, takenIn } from '../../engine/body/fitting.ts';
import type { ByGore } from './gore-sizes.ts';

/** What a fitting took from each gore at the waist, mm, half gores at the centres: the seams run on from the bodice. */
export function takenAtWaist(changes: readonly FittingChange[]): ByGore {
  const at = (seam: FittedSeam): number => takenIn(changes, seam, 'waist');
  return {
    'centre front': at('front princess seam'),
    'side front': at('front princess seam') + at('side seam'),
    'side back': at('side seam') + at('back princess seam'),
    'centre back': at('back princess seam') + at('centre back seam'),
  };
}
