import type { Choice } from '../engine/pattern/styling.ts';

/** Choices of every garment: how its pieces are finished. */
export const makingChoices = [
  {
    kind: 'number',
    name: 'seamAllowance',
    unit: 'mm',
    default: 12.7,
    min: 6,
    max: 25,
    help: 'cloth beyond every stitching line',
  },
  {
    kind: 'word',
    name: 'notchType',
    default: 'slit',
    words: ['slit', 'wedge'],
    help: 'how notches are marked on the cutting line',
  },
] as const satisfies readonly Choice[];

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
