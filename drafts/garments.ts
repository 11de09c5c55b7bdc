import type { Draft } from '../engine/pattern/draft.ts';
import { garments as byName } from './garments-by-name.ts';

/** Every garment that can be drafted, in the order in which they are listed. */
export const garments: readonly Draft[] = Object.values(byName);
