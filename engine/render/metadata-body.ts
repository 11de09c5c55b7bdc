import * as z from 'zod';
import { measurementNames } from '../body/body.ts';
import {
  type FittedLevel,
  type FittedSeam,
  fittedLevels,
  fittedSeams,
  plainChangeNames,
} from '../body/fitting.ts';
import { limitsOf } from '../body/limits.ts';
import { sides } from '../body/side.ts';

/** No fitting moves anything by more, mm. */
const MOST_MOVED = 100;

/** No fitting finds more. */
const MOST_FOUND = 40;

const moved = z.number().positive().max(MOST_MOVED);

const levels = [...new Set(Object.values(fittedLevels).flat())] as readonly FittedLevel[];

const isSewn = ({ seam, level }: { readonly seam: FittedSeam; readonly level: FittedLevel }): boolean =>
  fittedLevels[seam].some((one) => one === level);

const change = z.union([
  z
    .strictObject({
      kind: z.enum(['take in', 'let out']),
      seam: z.enum(fittedSeams),
      level: z.enum(levels),
      mm: moved,
    })
    .refine(isSewn),
  z.strictObject({ kind: z.enum(plainChangeNames), mm: moved, side: z.enum(sides).exactOptional() }),
]);

/** Estimates may reach beyond what a tape may say. */
const BEYOND = 2;

const sizes = z
  .record(z.enum(measurementNames), z.number().min(0))
  .refine((size) => measurementNames.every((name) => size[name] <= limitsOf[name].possible[1] * BEYOND));

/** The body that a sheet was drafted for: lengths in mm, the slope of the shoulder in radians. */
export const drawnFor = z.strictObject({
  wearer: z.enum(['adult', 'child']),
  size: sizes,
  fitting: z.array(change).max(MOST_FOUND).readonly(),
});
