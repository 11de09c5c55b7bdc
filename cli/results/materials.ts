import * as z from 'zod';
import type { Printed } from './printed.ts';

/** How often, and how, every piece is cut of each cloth. */
export const cutList = z.array(
  z.strictObject({
    number: z.int(),
    piece: z.string(),
    cut: z.array(
      z.strictObject({
        cloth: z.string(),
        count: z.int(),
        onFold: z.boolean(),
        pair: z.boolean(),
        printedSide: z.enum(['up', 'down']).optional(),
      }),
    ),
  }),
);

export type CutListResult = Printed<typeof cutList>;

/** What to buy. */
export const materials = z.strictObject({
  cloths: z.array(
    z.strictObject({
      cloth: z.string(),
      widths: z.array(
        z.strictObject({
          width: z.number(),
          laid: z.enum(['folded', 'open']).nullable().describe('Null where a piece is too broad for it.'),
          least: z.number().nullable().describe('No lay is shorter.'),
          needed: z.number().nullable().describe('By a quick plan; null where none was made.'),
        }),
      ),
    }),
  ),
  thread: z.array(
    z.strictObject({
      stitch: z.string().describe('Its number in ISO 4915.'),
      stitched: z.number(),
      length: z.number().describe('Of all threads together, ends counted.'),
    }),
  ),
  notions: z.array(
    z.strictObject({ name: z.string(), count: z.number(), length: z.number(), note: z.string() }),
  ),
});

export type MaterialsResult = Printed<typeof materials>;
