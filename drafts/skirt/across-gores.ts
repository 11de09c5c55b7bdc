import type { DimensionPart } from '../../engine/pattern/dimension.ts';
import { type GoreName, goreNames } from './by-gore.ts';

/** Where a girth of half the skirt lies, or what gores share of it: across the drawing of each. */
export const acrossGores = (
  level: 'waist' | 'hip level' | 'hem',
  gores: readonly GoreName[] = goreNames,
): readonly DimensionPart[] =>
  gores.map((gore) => {
    const on = `skirt ${gore}`;
    return { on, name: level === 'waist' ? `${on} waist` : level };
  });

/** The gores of the front half, and those of the back half. */
export const halves = {
  front: ['centre front', 'side front'],
  back: ['side back', 'centre back'],
} as const;
