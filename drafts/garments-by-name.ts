import { dress } from './dress.ts';
import { skirt } from './skirt/skirt.ts';
import { trial } from './trial/trial.ts';
import { bodice } from './whole-bodice.ts';

/** Every garment that can be drafted, by its name. */
export const garments = { dress, bodice, skirt, trial } as const;
