import type { Draft } from '../engine/pattern/draft.ts';
import { dress } from './dress.ts';
import { skirt } from './skirt/skirt.ts';
import { trial } from './trial/trial.ts';
import { bodice } from './whole-bodice.ts';

/** Every garment that can be drafted. */
export const garments: readonly Draft[] = [dress, bodice, skirt, trial];
