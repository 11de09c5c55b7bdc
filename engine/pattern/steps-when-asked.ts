import { withWhenAsked } from '../when-asked.ts';
import type { Garment, Step } from './garment.ts';

/**
 * A garment whose steps `write` writes, formulas and all, when somebody first asks it for them: that takes a fiftieth of the
 * time of a draft, and of most drafts nobody asks.
 */
export const stepsWhenAsked = (garment: Omit<Garment, 'steps'>, write: () => readonly Step[]): Garment =>
  withWhenAsked(garment, { steps: write });
