import type { Choice, StylingOf } from '../engine/pattern/styling.ts';
import { centreBackAllowance, seamAllowance, sideAllowance } from './allowances.ts';
import { seamFinish } from './finishing.ts';

/** Choices of every garment: how its pieces are finished. */
export const makingChoices = [
  seamAllowance,
  sideAllowance,
  centreBackAllowance,
  seamFinish,
  {
    kind: 'word',
    name: 'notchType',
    default: 'slit',
    words: ['slit', 'wedge'],
    help: 'how notches are marked on the cutting line',
  },
] as const satisfies readonly Choice[];

export type MakingStyling = StylingOf<typeof makingChoices>;

/** Bodice and skirt share one waist. */
export const waistEase = {
  kind: 'number',
  name: 'waistEase',
  unit: 'mm',
  default: 30,
  min: 0,
  max: 120,
  help: 'room around the waist',
} as const satisfies Choice;
